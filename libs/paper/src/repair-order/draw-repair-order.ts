import type { Readable } from 'node:stream';
import { defectsTable } from '../defects-section.js';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { hullMap } from '../hull-map.js';
import { drawPaper, type Section } from '../papers/draw-paper.js';
import { listed, sectionHeading, subHeading, tableOf } from '../papers/sections.js';
import { partFacts, titleFacts } from '../papers/title-facts.js';
import { para } from '../paragraph.js';
import { hasPhotos, photosOf } from '../photos-section.js';
import { text } from '../text-blocks.js';
import { verdictsTable } from '../verdicts-table.js';
import { laminateBlocks } from './laminate-blocks.js';
import type { RepairOrderView } from './repair-order-view.js';
import { workForm } from './work-form.js';

const STATEMENT =
  'States what the builder recorded of these defects, to be filled in by hand. Not an approved repair procedure, and not ' +
  'a certificate of compliance, a survey, a warranty, a title document or a statement of fitness.';

/** What this paper may not decide. */
const DEFERS =
  'This paper plans no repair. The material’s data sheets, the approved procedure, local codes and the authority having ' +
  'jurisdiction come first; what they reserve to licensed, certified or qualified people is left to them.';

/**
 * Draws an order to repair defects of a part as a PDF for the bay: the defects with their map, the laminate that a patch
 * replaces, the cautions in full, and a grid to be filled in by hand.
 *
 * @throws TypeError when `created` is no date
 */
export const drawRepairOrder = (view: RepairOrderView, created: Date): Readable => {
  const { number, hull, hin } = view.part;
  const keywords = [hull, hin, ...view.defects.map(({ mark }) => mark)].filter((word) => word !== null);
  return drawPaper(
    view,
    { name: 'Repair order', of: 'part', code: number, statement: STATEMENT, keywords },
    created,
    (fonts) => sections(fonts, view),
  );
};

function* sections(fonts: Fonts, view: RepairOrderView): Generator<Section> {
  yield [
    titleFacts(fonts, view, partFacts(view.part)),
    text(fonts, [para(DEFERS), para('Never mix catalyst and promoter directly.', 'bold')], 8),
  ];
  yield defects(fonts, view);
  if (hasPhotos(view.defects)) yield photos(fonts, view);
  yield laminateBlocks(fonts, view.layers);
  yield cautions(fonts, view);
  if (view.defects.length > 0) yield workForm(fonts, view.defects);
}

const defects = (fonts: Fonts, view: RepairOrderView): readonly Block[] => [
  ...listed(
    fonts,
    'Defects',
    tableOf(view.defects, (rows) => defectsTable(fonts, rows)),
    'No defect of this part is open: there is nothing to repair.',
  ),
  text(fonts, [para(view.asked, 'note')]),
  ...verdictsTable(
    fonts,
    view.defects.flatMap(({ verdicts }) => verdicts),
  ),
  ...(view.map === undefined
    ? []
    : [
        sectionHeading(fonts, 'Hull map with these marks alone'),
        ...hullMap(fonts, view.map, `${view.part.kind}, part ${view.part.number}`),
      ]),
];

function* photos(fonts: Fonts, { defects: shown }: RepairOrderView): Generator<Block> {
  yield sectionHeading(fonts, 'Photos of these defects');
  yield* photosOf(fonts, shown);
}

function* cautions(fonts: Fonts, view: RepairOrderView): Generator<Block> {
  yield sectionHeading(fonts, 'Cautions');
  for (const { work, says } of view.cautions) {
    yield subHeading(fonts, work);
    yield text(
      fonts,
      says.map((caution) => para(`–\u00a0 ${caution}`)),
      0,
    );
  }
}
