import { beginsRight } from './direction.js';
import type { Fonts } from './fonts.js';
import type { Verdict } from './layer-view.js';
import { breakLines } from './lines.js';
import type { Unit } from './unit.js';
import { STYLES, type StyleName } from './type-styles.js';
import { drawVerdict, VERDICT_WIDTH } from './verdict-mark.js';

/** A text in one style; with a verdict its shape stands before the first line. */
export interface Paragraph {
  readonly text: string;
  readonly style: StyleName;
  readonly verdict?: Verdict;
}

/** A line ready to be drawn; `width` in points, without the indent. Lines of a text from right to left end evenly. */
export interface SetLine {
  readonly units: readonly Unit[];
  readonly style: StyleName;
  readonly width: number;
  readonly indent: number;
  readonly verdict?: Verdict;
}

/** A paragraph in a style; the usual way to make one. */
export const para = (text: string, style: StyleName = 'body'): Paragraph => ({ text, style });

/** Breaks paragraphs into lines for a column of a width in points. */
export const setLines = (fonts: Fonts, paragraphs: readonly Paragraph[], width: number): readonly SetLine[] =>
  paragraphs.flatMap((paragraph) => setOne(fonts, paragraph, width));

const setOne = (fonts: Fonts, { text, style, verdict }: Paragraph, width: number): readonly SetLine[] => {
  const { face, size } = STYLES[style];
  const indent = verdict === undefined ? 0 : VERDICT_WIDTH;
  const measure = (units: readonly Unit[]): number => fonts.width(units, face, size);
  const all = fonts.units(text, face);
  const lines = breakLines(all, width - indent, measure).map((units) => ({ units, width: measure(units) }));
  const widest = Math.max(...lines.map((line) => line.width));
  return lines.map((line, i) => ({
    ...line,
    style,
    indent: indent + (beginsRight(all) ? widest - line.width : 0),
    ...(verdict !== undefined && i === 0 ? { verdict } : {}),
  }));
};

/** Height in points of lines set solid. */
export const heightOf = (lines: readonly SetLine[]): number =>
  lines.reduce((sum, { style }) => sum + STYLES[style].leading, 0);

/** Draws lines from the top down; right alignment keeps the right edge at x + width. */
export const drawLines = (
  doc: PDFKit.PDFDocument,
  fonts: Fonts,
  lines: readonly SetLine[],
  at: { readonly x: number; readonly y: number; readonly width: number; readonly align?: 'left' | 'right' },
): void => {
  let y = at.y;
  for (const line of lines) {
    const { face, size, leading, ink } = STYLES[line.style];
    const x = at.align === 'right' ? at.x + at.width - line.width : at.x + line.indent;
    if (line.verdict !== undefined) drawVerdict(doc, line.verdict, x - line.indent, y + leading / 2);
    doc.fillColor(ink);
    fonts.draw(line.units, face, size, x, y + (leading - size * 1.3) / 2);
    y += leading;
  }
};
