/** The inks of the paper. None carries a meaning alone: a word or a shape always says the same. */
export const INK = {
  ink: '#15223F',
  soft: '#48526D',
  hair: '#B9B6AC',
  hatch: '#33425F',
  ghost: '#A6A9AF',
  pale: '#DAD7CE',
  mark: '#2B2F38',
  white: '#FFFFFF',
} as const;

/** Line widths in points. */
export const STROKE = { hair: 0.4, line: 0.8, bold: 1.4 } as const;
