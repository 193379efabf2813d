import { facts, nothing } from '../facts.js';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { sectionHeading, subHeading } from '../papers/sections.js';
import { para } from '../paragraph.js';
import { cell, table } from '../table.js';
import type { RecalledView, RecallWindowView } from './equipment-recall-view.js';

/** One time in which the equipment may have been unfit, with all that was read or sprayed with it then. */
export const windowSection = (fonts: Fonts, window: RecallWindowView): readonly Block[] => [
  sectionHeading(fonts, `Window of ${window.what}`),
  facts(
    fonts,
    [
      ['Opens', window.opens],
      ['Found bad', window.foundBad],
      ['Closes', window.closes],
    ],
    0,
  ),
  ...list(fonts, 'Readings', window.readings, 'No reading was taken with it in this window.'),
  ...list(fonts, 'Sprayed or dispensed', window.drawn, 'Nothing was sprayed or dispensed with it in this window.'),
];

const list = (fonts: Fonts, title: string, rows: readonly RecalledView[], otherwise: string): readonly Block[] => [
  subHeading(fonts, title),
  rows.length === 0
    ? nothing(fonts, otherwise)
    : table(
        fonts,
        [
          { title: 'Hull, part', share: 0.18 },
          { title: 'Place', share: 0.2 },
          { title: 'What, value', share: 0.24 },
          { title: 'When, by', share: 0.2 },
          { title: 'Decided of it', share: 0.18 },
        ],
        rows.map(({ part, hull, place, what, value, when, by, disposition }) => [
          { paragraphs: [para(hull, 'code-bold'), para(part, 'code-note')] },
          cell(place),
          { paragraphs: [para(what), para(value, 'code-bold')] },
          { paragraphs: [para(when, 'note'), para(by, 'code-note')] },
          cell(disposition ?? 'suspect, not decided', disposition === null ? 'bold' : 'body'),
        ]),
      ),
];
