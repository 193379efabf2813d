import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import type { ReadingsView, ReadingView } from './layer-view.js';
import { para } from './paragraph.js';
import { readingsPlot } from './readings-plot.js';
import { cell, table, type Cell } from './table.js';
import { heading, text } from './text-blocks.js';

/** Each kind of reading with its limits, rule and equipment, and every reading at its spot. */
export const readingsTables = (fonts: Fonts, groups: readonly ReadingsView[]): readonly Block[] =>
  groups.flatMap((group) => [
    heading(fonts, group.what, { level: 4, style: 'group', before: 7 }),
    text(fonts, [para(judgedBy(group), 'note')], 0, true),
    ...(group.plot === undefined ? [] : [readingsPlot(fonts, group.plot)]),
    table(fonts, COLUMNS, group.rows.map(row)),
  ]);

const COLUMNS = [
  { title: 'Spot', share: 0.06 },
  { title: 'Value', share: 0.22, align: 'right' },
  { title: 'Place', share: 0.29 },
  { title: 'Verdict', share: 0.22 },
  { title: 'By, when', share: 0.21 },
] as const;

const judgedBy = ({ limits, rule, equipment }: ReadingsView): string =>
  [
    ['Limits', limits],
    ['Rule', rule],
    ['Equipment', equipment],
  ]
    .filter(([, value]) => value !== '')
    .map(([label, value]) => `${label}: ${value}`)
    .join('. ');

const row = ({ spot, value, place, verdict, note, byWhen }: ReadingView): readonly Cell[] => [
  cell(spot, 'code'),
  cell(value, 'code'),
  cell(place),
  {
    paragraphs: [
      { text: verdict, style: verdict === 'outside' ? 'bold' : 'body', verdict },
      ...(note === undefined ? [] : [para(note, 'note')]),
    ],
  },
  cell(byWhen, 'note'),
];
