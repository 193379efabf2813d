import type { Readable } from 'node:stream';
import { nonconformitiesTable } from '../defects-section.js';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { drawPaper, type Section } from '../papers/draw-paper.js';
import { listed, tableOf } from '../papers/sections.js';
import { titleFacts } from '../papers/title-facts.js';
import { para } from '../paragraph.js';
import { readingsTables } from '../readings-tables.js';
import { stamp } from '../text-blocks.js';
import { verdictsTable } from '../verdicts-table.js';
import { balanceBlocks, certificateBlocks, containersTable, historyTable, madeOfBlocks } from './lot-itself.js';
import type { LotReportView } from './lot-report-view.js';
import { hullsBlocks, lotsMadeTable, possiblyBlocks } from './where-it-went.js';

const STATEMENT =
  'States what the builder recorded of this lot and where it went. A hull named here is associated with the lot, which ' +
  'is not to say that the lot caused anything. Not a certificate of the material or of compliance, a survey, a warranty ' +
  'or a title document.';

/**
 * Draws the report of a lot as a PDF: what it is, what it is made of, how it was judged, where it went, what is left.
 *
 * @throws TypeError when `created` is no date
 */
export const drawLotReport = (view: LotReportView, created: Date): Readable =>
  drawPaper(
    view,
    { name: 'Lot report', of: 'lot', code: view.lot, statement: STATEMENT, keywords: [] },
    created,
    (fonts) => sections(fonts, view),
  );

function* sections(fonts: Fonts, view: LotReportView): Generator<Section> {
  yield [
    titleFacts(fonts, view, [
      ['Lot', view.lot, 'code-bold'],
      ...view.identity.map(([label, value]) => [label, value] as const),
    ]),
    stamp(fonts, [para(view.state, 'bold')], view.released),
    ...certificateBlocks(fonts, view),
  ];
  yield history(fonts, view);
  yield listed(fonts, 'What it is made of', madeOfBlocks(fonts, view), 'It was received, and is made of no other lot.');
  yield judged(fonts, view);
  yield listed(
    fonts,
    'Hulls that hold it',
    hullsBlocks(fonts, view.hulls),
    'No hull and no part is known to hold any of it.',
  );
  if (view.possibly !== null) yield possiblyBlocks(fonts, view.possibly);
  yield listed(
    fonts,
    'Lots made of it',
    tableOf(view.lotsMade, (rows) => lotsMadeTable(fonts, rows)),
    'No bucket, kit or tank fill was made of it.',
  );
  yield balanceBlocks(fonts, view);
}

const history = (fonts: Fonts, view: LotReportView): readonly Block[] => [
  ...listed(
    fonts,
    'History',
    tableOf(view.history, (rows) => historyTable(fonts, rows)),
    'Nobody has said anything of its state, held it, tested it again, counted it or booked a loss.',
  ),
  ...listed(
    fonts,
    'Containers',
    tableOf(view.containers, (rows) => containersTable(fonts, rows)),
    'No containers of it are labelled.',
  ),
];

const judged = (fonts: Fonts, view: LotReportView): readonly Block[] => [
  ...listed(
    fonts,
    'Readings and verdicts of the lot',
    [...readingsTables(fonts, view.readings), ...verdictsTable(fonts, view.verdicts)],
    'No readings of the lot itself are recorded, and no verdicts on it.',
  ),
  ...listed(
    fonts,
    'Nonconformities of the lot',
    tableOf(view.nonconformities, (rows) => nonconformitiesTable(fonts, rows)),
    'No nonconformities of the lot are recorded.',
  ),
];
