import type { Readable } from 'node:stream';
import { defectsTable, nonconformitiesTable } from '../defects-section.js';
import { nothing } from '../facts.js';
import type { Fonts } from '../fonts.js';
import { drawPaper, type Section } from '../papers/draw-paper.js';
import { listed, tableOf } from '../papers/sections.js';
import { partFacts, titleFacts } from '../papers/title-facts.js';
import { para } from '../paragraph.js';
import { stamp, text } from '../text-blocks.js';
import { holdPointSection } from './hold-point-section.js';
import type { HoldPointsView } from './hold-points-view.js';

const STATEMENT =
  'States what the builder recorded of the hold points of this part. A signature says that the signer looked at what ' +
  'stands here. Not a certificate of compliance, a survey, a warranty, a title document or a statement of fitness.';

/** How it is signed, and what a signature on paper is worth. */
const SIGNING =
  'The one who signs a hold point is not one who made the layer. Who signed is known as stated, by the badge that was ' +
  'named, not proved. A signature on this sheet is no record yet: enter it, and the record says who entered it.';

/**
 * Draws the sheet of the hold points of a part as a PDF: each with what was made, read and found, and its signature or a
 * field for it.
 *
 * A layer that is to come has no field: there is nothing yet that could be signed.
 *
 * @throws TypeError when `created` is no date
 */
export const drawHoldPoints = (view: HoldPointsView, created: Date): Readable => {
  const { number, hull, hin } = view.part;
  const keywords = [hull, hin].filter((word) => word !== null);
  return drawPaper(
    view,
    { name: 'Hold-point sheet', of: 'part', code: number, statement: STATEMENT, keywords },
    created,
    (fonts) => sections(fonts, view),
  );
};

function* sections(fonts: Fonts, view: HoldPointsView): Generator<Section> {
  const { holdPoints } = view;
  const signed = holdPoints.filter(({ signature }) => signature !== null).length;
  yield [
    titleFacts(fonts, view, partFacts(view.part)),
    ...(holdPoints.length === 0
      ? [nothing(fonts, 'The laminate schedule of this part sets no hold points.')]
      : [stamp(fonts, [para(`${signed} of ${holdPoints.length} signed`, 'bold')], signed === holdPoints.length)]),
    text(fonts, [para(SIGNING)], 7),
  ];
  for (const point of holdPoints) yield holdPointSection(fonts, point);
  yield listed(
    fonts,
    'Open nonconformities of the part that are about no layer',
    tableOf(view.nonconformities, (rows) => nonconformitiesTable(fonts, rows)),
    'None is open.',
  );
  yield listed(
    fonts,
    'Open defects of the part whose layer is not known',
    tableOf(view.defects, (rows) => defectsTable(fonts, rows)),
    'None is open.',
  );
}
