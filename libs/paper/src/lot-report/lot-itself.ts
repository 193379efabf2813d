import { facts } from '../facts.js';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { sectionHeading, tableOf } from '../papers/sections.js';
import { para } from '../paragraph.js';
import { cell, table } from '../table.js';
import { heading, text } from '../text-blocks.js';
import type { ContainerLineView, LotEventView, LotReportView } from './lot-report-view.js';

/** What the certificate says, and the limits that it names. */
export const certificateBlocks = (fonts: Fonts, view: LotReportView): readonly Block[] => [
  ...pairs(fonts, 'Certificate, as written', view.certificate),
  ...pairs(fonts, 'Limits that the certificate of this lot names', view.certified),
];

const pairs = (fonts: Fonts, title: string, rows: readonly (readonly [string, string])[]): readonly Block[] =>
  rows.length === 0 ? [] : [heading(fonts, title, { level: 3, style: 'group', before: 9 }), facts(fonts, rows, 0)];

/** States, holds, retests, counts and losses. */
export const historyTable = (fonts: Fonts, rows: readonly LotEventView[]): Block =>
  table(
    fonts,
    [
      { title: 'When', share: 0.22 },
      { title: 'What', share: 0.26 },
      { title: 'Why', share: 0.38 },
      { title: 'By', share: 0.14 },
    ],
    rows.map(({ when, what, why, by }) => [cell(when, 'note'), cell(what, 'bold'), cell(why), cell(by, 'code')]),
  );

/** Drums, boxes and rolls. */
export const containersTable = (fonts: Fonts, rows: readonly ContainerLineView[]): Block =>
  table(
    fonts,
    [
      { title: 'Container', share: 0.24 },
      { title: 'Filled with', share: 0.16, align: 'right' },
      { title: 'Left', share: 0.14, align: 'right' },
      { title: 'Place', share: 0.18 },
      { title: 'State', share: 0.28 },
    ],
    rows.map(({ label, kind, amount, left, place, state }) => [
      { paragraphs: [para(label, 'code-bold'), para(kind, 'note')] },
      cell(amount, 'code'),
      cell(left, 'code'),
      cell(place),
      cell(state),
    ]),
  );

/** The received lots behind the lot, with what their shares rest on. */
export const madeOfBlocks = (fonts: Fonts, { madeOf, assumes }: LotReportView): readonly Block[] => [
  ...tableOf(madeOf, (rows) =>
    table(
      fonts,
      [
        { title: 'Lot, supplier’s lot', share: 0.4 },
        { title: 'Material', share: 0.28 },
        { title: 'Role', share: 0.17 },
        { title: 'Share of the mass', share: 0.15, align: 'right' },
      ],
      rows.map(({ lot, supplierLot, material, role, share }) => [
        { paragraphs: [para(lot, 'code-bold'), para(supplierLot, 'code-note')] },
        cell(material),
        cell(role),
        cell(share, 'code'),
      ]),
    ),
  ),
  ...(assumes === null ? [] : [text(fonts, [para(assumes, 'note')])]),
];

/** What came, what went and what is left, kilograms. */
export const balanceBlocks = (fonts: Fonts, { balance, balanced }: LotReportView): readonly Block[] => [
  sectionHeading(fonts, 'Balance'),
  table(
    fonts,
    [
      { title: 'What', share: 0.7 },
      { title: 'Kilograms', share: 0.3, align: 'right' },
    ],
    balance.map(([what, kg]) => [cell(what), cell(kg, 'code')]),
  ),
  text(fonts, [para(balanced)]),
];
