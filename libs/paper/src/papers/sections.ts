import { bookmark } from '../bookmark.js';
import { nothing } from '../facts.js';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { heading } from '../text-blocks.js';

/** The heading of a section, with its bookmark. */
export const sectionHeading = (fonts: Fonts, words: string): Block =>
  heading(fonts, words, {
    level: 2,
    style: 'section',
    before: 14,
    onDraw: ({ doc, y }) => bookmark(doc, words, y),
  });

/** A heading under a section. */
export const subHeading = (fonts: Fonts, words: string): Block =>
  heading(fonts, words, { level: 3, style: 'layer', before: 9 });

/** A section under its heading; where there is nothing to list a sentence says so. */
export const listed = (fonts: Fonts, words: string, blocks: readonly Block[], otherwise: string): readonly Block[] => [
  sectionHeading(fonts, words),
  ...(blocks.length === 0 ? [nothing(fonts, otherwise)] : blocks),
];

/** Rows as blocks: none where there are no rows, so that `listed` says so. */
export const tableOf = <Row>(rows: readonly Row[], make: (rows: readonly Row[]) => Block): readonly Block[] =>
  rows.length === 0 ? [] : [make(rows)];
