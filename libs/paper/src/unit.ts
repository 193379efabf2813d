/** A piece of text that is never split: a character with its marks, a code point in words, a space or a line end. */
export interface Unit {
  readonly kind: 'text' | 'code point' | 'space' | 'line end';
  readonly text: string;
  /** Index of the font of the family that has the glyphs. */
  readonly font: number;
  /** Embedding level of UAX #9 where it is not 0: odd runs from right to left. */
  readonly level?: number;
  /** Marks of the writing direction that stand before and behind it: they are obeyed and have no glyph. */
  readonly marksBefore?: string;
  readonly marksBehind?: string;
  /** Set where a line may begin with it though no space stands before it. */
  readonly opens?: true;
}
