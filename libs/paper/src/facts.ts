import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import { para, type Paragraph } from './paragraph.js';
import { table } from './table.js';
import { text } from './text-blocks.js';

/** A label with its value; a null or empty value leaves the pair out. */
export type Fact = readonly [label: string, value: string | null, style?: Paragraph['style']];

/** Labels and values in two columns. */
export const facts = (fonts: Fonts, pairs: readonly Fact[], before = 3): Block =>
  table(
    fonts,
    [
      { title: '', share: 0.18 },
      { title: '', share: 0.82 },
    ],
    pairs.flatMap(([label, value, style]) =>
      value === null || value === ''
        ? []
        : [[{ paragraphs: [para(label, 'label')] }, { paragraphs: [para(value, style)] }]],
    ),
    { before, headed: false },
  );

/** A sentence that stands where a list would, when there is nothing to list. */
export const nothing = (fonts: Fonts, sentence: string): Block => text(fonts, [para(sentence, 'empty')]);
