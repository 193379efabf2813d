import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import type { VerdictView } from './layer-view.js';
import { para } from './paragraph.js';
import { cell, table, type Cell } from './table.js';

/** What was judged by a rule of the trade: what was found, by which rule, and where the limits come from. */
export const verdictsTable = (fonts: Fonts, verdicts: readonly VerdictView[]): readonly Block[] =>
  verdicts.length === 0
    ? []
    : [
        table(
          fonts,
          [
            { title: 'Judged', share: 0.17 },
            { title: 'Verdict', share: 0.15 },
            { title: 'Found', share: 0.36 },
            { title: 'Rule, source', share: 0.32 },
          ],
          verdicts.map(row),
        ),
      ];

const row = ({ topic, verdict, detail, rule, source, corrected }: VerdictView): readonly Cell[] => [
  cell(topic.charAt(0).toUpperCase() + topic.slice(1)),
  {
    paragraphs: [
      { text: verdict, style: verdict === 'outside' ? 'bold' : 'body', verdict },
      ...(corrected ? [para('judged again', 'note')] : []),
    ],
  },
  cell(detail),
  { paragraphs: [para(rule, 'note'), para(source, 'note')] },
];
