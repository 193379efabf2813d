import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { tableOf } from '../papers/sections.js';
import { para } from '../paragraph.js';
import { cell, table, type Cell } from '../table.js';
import { heading, text } from '../text-blocks.js';
import type { ClassView, RowView } from './class-view.js';
import { axisRow, ratioCell, STANDS } from './forest.js';
import { ratioAxis } from './ratio-axis.js';

const CRUDE_SAYS =
  'The raw table takes all hulls at once, whatever their age and build period. Where a word stands ' +
  'beside it, age or build period goes with what is compared, and the stratified test holds.';

const TOGETHER_SAYS =
  'Lots in exactly the same hulls are one class: no figure can tell them apart. To tell them apart takes retained samples of ' +
  'each, or hulls that have one and not the other.';

/** Classes with observed over expected claims on one axis: the first under a heading of its own kind. */
export const forestTable = (fonts: Fonts, rows: readonly RowView[]): Block => {
  const axis = ratioAxis(rows.map(({ ratio }) => ratio));
  return table(
    fonts,
    [
      { title: 'Class', share: 0.24 },
      { title: 'Claims', share: 0.15 },
      { title: 'Observed / expected', share: 0.25 },
      { title: 'Ratio, 95 %', share: 0.19 },
      { title: 'p, q', share: 0.17 },
    ],
    [...rows.map((row) => forestRow(row, ratioCell(row, axis))), axisRow(fonts, axis)],
  );
};

const forestRow = (row: RowView, picture: Cell): readonly Cell[] => [
  { paragraphs: [para(row.named, 'code-bold'), para(row.family, 'note')] },
  { paragraphs: [para(row.observed), para(row.expected, 'note')] },
  picture,
  { paragraphs: [para(row.ratioText, 'code'), para(row.limits, 'code-note'), para(row.odds, 'note')] },
  { paragraphs: [para(row.p, 'code'), para(row.q, 'code'), para(STANDS[row.standing], 'bold')] },
];

/** The raw tables beside the stratified tests, with a word where they differ. */
export const crudeBlocks = (fonts: Fonts, rows: readonly RowView[]): readonly Block[] =>
  tableOf(rows, (all) =>
    table(
      fonts,
      [
        { title: 'Class', share: 0.28 },
        { title: 'Hulls with it: claim / none', share: 0.15 },
        { title: 'Others: claim / none', share: 0.15 },
        { title: 'p, raw table', share: 0.17 },
        { title: 'Against the stratified test', share: 0.25 },
      ],
      all.map(({ named, crude, p }) => [
        cell(named, 'code-bold'),
        cell(crude.exposed, 'code'),
        cell(crude.others, 'code'),
        cell(crude.p, 'code'),
        {
          paragraphs: [para(p, 'code'), para(crude.differs ?? 'they agree', crude.differs === null ? 'note' : 'bold')],
        },
      ]),
    ),
  ).flatMap((block) => [group(fonts, 'The raw table beside it'), block, text(fonts, [para(CRUDE_SAYS, 'note')])]);

/** What each class is made of: lots in the same hulls are one class. */
export const memberBlocks = (fonts: Fonts, classes: readonly ClassView[]): readonly Block[] =>
  tableOf(classes, (all) =>
    table(
      fonts,
      [
        { title: 'Class', share: 0.26 },
        { title: 'Lot, supplier’s lot', share: 0.28 },
        { title: 'Material, where', share: 0.46 },
      ],
      all.flatMap(({ members, named, together, nearly }) =>
        members.map((member, i) => [
          i === 0 ? classCell(named, together, nearly) : cell(''),
          { paragraphs: [para(member.lot, 'code-bold'), para(member.supplierLot, 'note')] },
          { paragraphs: [para(member.material), para(member.family, 'note')] },
        ]),
      ),
    ),
  ).flatMap((block) => [group(fonts, 'What each class is'), block, text(fonts, [para(TOGETHER_SAYS, 'note')])]);

const classCell = (named: string, together: string | null, nearly: string | null): Cell => ({
  paragraphs: [
    para(named, 'code-bold'),
    ...(together === null ? [] : [para(together, 'bold')]),
    ...(nearly === null ? [] : [para(nearly, 'note')]),
  ],
});

/** Whether more of a lot goes with more claims, and how the threshold of exposure matters. */
export const doseBlocks = (fonts: Fonts, classes: readonly ClassView[]): readonly Block[] =>
  tableOf(classes, (all) =>
    table(
      fonts,
      [
        { title: 'Class', share: 0.24 },
        { title: 'Claims of hulls with so much or more', share: 0.2 },
        { title: 'Shares in hulls', share: 0.17 },
        { title: 'More of it, more claims', share: 0.19 },
        { title: 'Weighed', share: 0.2 },
      ],
      all.map(({ named, atShares, shares, dose, adjusted, posterior }) => [
        cell(named, 'code-bold'),
        { paragraphs: atShares.map(({ from, says }) => para(`${from}: ${says}`, 'code')) },
        cell(shares),
        cell(dose),
        { paragraphs: [para(posterior), para(adjusted, 'note')] },
      ]),
    ),
  ).flatMap((block) => [group(fonts, 'Share, and how sure'), block]);

const group = (fonts: Fonts, words: string): Block => heading(fonts, words, { level: 3, style: 'group', before: 9 });
