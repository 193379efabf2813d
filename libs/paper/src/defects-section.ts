import type { DefectView, NonconformityView, OutsideRepairView, RepairView } from './build-record-view.js';
import { facts, type Fact } from './facts.js';
import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import { para } from './paragraph.js';
import { readingsTables } from './readings-tables.js';
import { cell, table, type Cell } from './table.js';
import { heading, stamp } from './text-blocks.js';
import { verdictsTable } from './verdicts-table.js';
import { usedTable } from './used-table.js';

/** Defects with their place, state and disposition. */
export const defectsTable = (fonts: Fonts, defects: readonly DefectView[]): Block =>
  table(
    fonts,
    [
      { title: 'Mark', share: 0.09 },
      { title: 'Defect, size', share: 0.24 },
      { title: 'Place, layer', share: 0.26 },
      { title: 'State', share: 0.13 },
      { title: 'Disposition, note', share: 0.28 },
    ],
    defects.map(defectRow),
  );

const defectRow = (defect: DefectView): readonly Cell[] => [
  cell(defect.mark, 'code-bold'),
  { paragraphs: [para(defect.kind, 'bold'), para(defect.size, 'note')] },
  { paragraphs: [para(defect.place), para(defect.layer, 'note')] },
  cell(defect.state, 'bold'),
  {
    paragraphs: [para(defect.disposition ?? 'none yet'), ...(defect.note === null ? [] : [para(defect.note, 'note')])],
  },
];

/** Nonconformities; one without disposition is open. */
export const nonconformitiesTable = (fonts: Fonts, rows: readonly NonconformityView[]): Block =>
  table(
    fonts,
    [
      { title: 'Rule', share: 0.24 },
      { title: 'What happened', share: 0.34 },
      { title: 'When', share: 0.17 },
      { title: 'Disposition', share: 0.25 },
    ],
    rows.map(({ rule, detail, when, disposition }) => [
      cell(rule),
      cell(detail),
      cell(when, 'note'),
      cell(disposition ?? 'open, no disposition', disposition === null ? 'bold' : 'body'),
    ]),
  );

/** A repair as done: procedure, geometry, material, readings, acceptance. */
export const repairSection = (fonts: Fonts, repair: RepairView): readonly Block[] => [
  heading(fonts, `Repair ${repair.mark}`, { level: 3, style: 'layer', before: 9 }),
  facts(
    fonts,
    [
      ['Defects', repair.defects.join(', '), 'code'],
      [repair.outside === null ? 'When' : 'Recorded', repair.when],
      ['Procedure', repair.procedure],
      ['Geometry', repair.geometry],
      ['Plies', repair.plies],
      ['Done by', repair.doneBy.join(', '), 'code'],
      ...(repair.outside === null ? [] : elsewhere(repair.outside)),
    ],
    0,
  ),
  ...(repair.used.length > 0 ? [usedTable(fonts, repair.used)] : []),
  ...readingsTables(fonts, repair.readings),
  ...verdictsTable(fonts, repair.verdicts),
  stamp(fonts, [para('Acceptance', 'bold'), para(repair.acceptance ?? 'not accepted')], repair.acceptance !== null),
];

const elsewhere = ({ done, material, knownFrom, note, photos }: OutsideRepairView): readonly Fact[] => [
  ['Witness', 'not witnessed by the plant', 'bold'],
  ['Done', done],
  ['Material', material],
  ['Known from', knownFrom],
  ['Note', note],
  ['Photos', photos],
];
