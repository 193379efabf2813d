import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { sectionHeading, tableOf } from '../papers/sections.js';
import { para } from '../paragraph.js';
import { cell, table, type Cell } from '../table.js';
import { heading, text } from '../text-blocks.js';
import type { HoldingHullView, HoldingPlaceView, LotMadeView, LotReportView } from './lot-report-view.js';

const SAYS =
  'Share: kilograms of this lot / kilograms of all that has the same role, in the place, the layer with most of it, or ' +
  'the whole hull. The basis is the weakest on the way. Assumes well-mixed tanks.';

/** Hulls with their kilograms, then each place in them. */
export const hullsBlocks = (fonts: Fonts, hulls: readonly HoldingHullView[]): readonly Block[] =>
  hulls.length === 0
    ? []
    : [
        hullsTable(fonts, hulls),
        text(fonts, [para(SAYS, 'note')]),
        ...tableOf(
          hulls.flatMap((hull) => hull.places.map((place) => ({ hull, place }))),
          (rows) => placesTable(fonts, rows),
        ).flatMap((block) => [heading(fonts, 'By part and place', { level: 3, style: 'group', before: 9 }), block]),
      ];

/** Hulls that may hold it, apart, with the reason why that is not known. */
export const possiblyBlocks = (
  fonts: Fonts,
  { why, hulls }: NonNullable<LotReportView['possibly']>,
): readonly Block[] => [
  sectionHeading(fonts, 'Hulls that possibly hold it'),
  text(fonts, [para(why)], 2, true),
  table(
    fonts,
    [
      { title: 'Hull, HIN', share: 0.5 },
      { title: 'Now', share: 0.5 },
    ],
    hulls.map((hull) => [hullCell(hull), cell(hull.now)]),
  ),
];

const hullCell = ({ hull, hin }: HoldingHullView): Cell => ({
  paragraphs: [para(hull, 'code-bold'), ...(hin === null ? [] : [para(hin, 'code-note')])],
});

const hullsTable = (fonts: Fonts, hulls: readonly HoldingHullView[]): Block =>
  table(
    fonts,
    [
      { title: 'Hull, HIN', share: 0.22 },
      { title: 'Of this lot', share: 0.15, align: 'right' },
      { title: 'Share of hull', share: 0.12, align: 'right' },
      { title: 'Largest in a place', share: 0.14, align: 'right' },
      { title: 'Basis', share: 0.14 },
      { title: 'Now', share: 0.23 },
    ],
    hulls.map((hull) => [
      hullCell(hull),
      cell(hull.kg, 'code'),
      cell(hull.shareOfHull, 'code'),
      cell(hull.largestShare, 'code'),
      cell(hull.basis),
      cell(hull.now, 'note'),
    ]),
  );

const placesTable = (
  fonts: Fonts,
  rows: readonly { readonly hull: HoldingHullView; readonly place: HoldingPlaceView }[],
): Block =>
  table(
    fonts,
    [
      { title: 'Hull, part', share: 0.22 },
      { title: 'Place, role', share: 0.2 },
      { title: 'Of this lot', share: 0.15, align: 'right' },
      { title: 'Share', share: 0.1, align: 'right' },
      { title: 'Basis', share: 0.13 },
      { title: 'When', share: 0.2 },
    ],
    rows.map(({ hull, place }) => [
      { paragraphs: [para(hull.hull, 'code-bold'), para(place.part, 'code-note')] },
      { paragraphs: [para(place.place), para(place.role, 'note')] },
      cell(place.kg, 'code'),
      cell(place.share, 'code'),
      cell(place.basis),
      cell(place.when, 'note'),
    ]),
  );

/** Buckets, kits and tank fills that it went into. */
export const lotsMadeTable = (fonts: Fonts, rows: readonly LotMadeView[]): Block =>
  table(
    fonts,
    [
      { title: 'Lot', share: 0.3 },
      { title: 'What', share: 0.2 },
      { title: 'Of this lot', share: 0.17, align: 'right' },
      { title: 'Basis', share: 0.13 },
      { title: 'When', share: 0.2 },
    ],
    rows.map(({ lot, origin, amount, basis, when }) => [
      cell(lot, 'code-bold'),
      cell(origin),
      cell(amount, 'code'),
      cell(basis),
      cell(when, 'note'),
    ]),
  );
