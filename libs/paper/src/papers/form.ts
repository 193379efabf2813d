import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { INK, STROKE } from '../ink.js';
import { cell, table, type Cell, type Column } from '../table.js';

/** Room to write in by hand, points: two lines. */
const ROOM = 42;

/**
 * A grid to be filled in by hand: one row for each name, one framed cell for each further column.
 *
 * @param columns the first is that of the names
 */
export const form = (fonts: Fonts, columns: readonly Column[], names: readonly string[]): Block =>
  table(
    fonts,
    columns,
    names.map((name) => [
      cell(name, 'code-bold'),
      ...columns.slice(1).map(({ title }) => empty(`To be filled in for ${name}: ${title}.`)),
    ]),
    { leastRowHeight: ROOM },
  );

const empty = (alt: string): Cell => ({
  paragraphs: [],
  alt,
  paint: (doc, { x, y, width, height }) => {
    doc
      .rect(x, y + 3, width, height - 6)
      .lineWidth(STROKE.line)
      .stroke(INK.soft);
  },
});
