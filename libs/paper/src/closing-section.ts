import type { BuildRecordView, CorrectionView, EquipmentView, JointView } from './build-record-view.js';
import { nonconformitiesTable } from './defects-section.js';
import { facts, nothing } from './facts.js';
import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import { para } from './paragraph.js';
import { readingsTables } from './readings-tables.js';
import { cell, table, type Cell } from './table.js';
import { heading, text } from './text-blocks.js';
import { usedTable } from './used-table.js';

/** What concerns the whole hull: joints, corrections, the rules it was judged by, and the cautions. */
export function* closingSection(fonts: Fonts, view: BuildRecordView): Generator<Block> {
  const title = (words: string): Block => heading(fonts, words, { level: 1, style: 'section', before: 18 });
  yield title('Joints');
  if (view.joints.length === 0) yield nothing(fonts, 'No parts have been joined to this hull yet.');
  for (const joint of view.joints) yield* jointSection(fonts, joint);
  yield title('Nonconformities of the hull and of lots in it');
  yield view.nonconformities.length === 0
    ? nothing(fonts, 'No nonconformities are recorded for the hull itself or for lots in it.')
    : nonconformitiesTable(fonts, view.nonconformities);
  yield title('Equipment');
  yield view.equipment.length === 0
    ? nothing(fonts, 'No equipment is named for what was read or sprayed.')
    : equipmentTable(fonts, view.equipment);
  yield title('Corrections');
  yield view.corrections.length === 0
    ? nothing(fonts, 'No facts of this hull have been corrected.')
    : correctionsTable(fonts, view.corrections);
  yield title('Judged by');
  yield view.sources.length === 0
    ? nothing(fonts, 'No rules are named.')
    : text(
        fonts,
        view.sources.map((source) => para(source)),
      );
  if (view.cautions.length === 0) return;
  yield title('Cautions');
  yield text(
    fonts,
    view.cautions.map((caution) => para(`–\u00a0 ${caution}`)),
  );
}

/** Each gauge and gun with its check state when it was used last on this hull. */
const equipmentTable = (fonts: Fonts, equipment: readonly EquipmentView[]): Block =>
  table(
    fonts,
    [
      { title: 'Code', share: 0.14 },
      { title: 'What', share: 0.32 },
      { title: 'Used last on this hull', share: 0.22 },
      { title: 'Check state then', share: 0.32 },
    ],
    equipment.map(({ code, what, lastUsed, state, suspect }) => [
      cell(code, 'code-bold'),
      cell(what),
      cell(lastUsed, 'note'),
      cell(state, suspect ? 'bold' : 'body'),
    ]),
  );

const jointSection = (fonts: Fonts, joint: JointView): readonly Block[] => [
  heading(fonts, joint.what, { level: 2, style: 'layer', before: 9 }),
  facts(
    fonts,
    [
      ['Parts', joint.parts],
      ['When', joint.when],
      ['Done by', joint.doneBy.join(', '), 'code'],
      ['Entered by', joint.enteredBy, 'code'],
      ['Note', joint.note],
    ],
    0,
  ),
  ...(joint.used.length > 0 ? [usedTable(fonts, joint.used)] : []),
  ...readingsTables(fonts, joint.readings),
];

const correctionsTable = (fonts: Fonts, corrections: readonly CorrectionView[]): Block =>
  table(
    fonts,
    [
      { title: 'When, by', share: 0.18 },
      { title: 'What', share: 0.2 },
      { title: 'Before', share: 0.19 },
      { title: 'After', share: 0.19 },
      { title: 'Reason', share: 0.24 },
    ],
    corrections.map(correctionRow),
  );

const correctionRow = ({ when, what, before, after, reason, by }: CorrectionView): readonly Cell[] => [
  { paragraphs: [para(when, 'note'), para(by, 'code-note')] },
  cell(what),
  cell(before),
  cell(after, 'bold'),
  cell(reason),
];
