import type { Readable } from 'node:stream';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { drawPaper, type Section } from '../papers/draw-paper.js';
import { listed, tableOf } from '../papers/sections.js';
import { titleFacts } from '../papers/title-facts.js';
import { para } from '../paragraph.js';
import { cell, table } from '../table.js';
import { stamp, text } from '../text-blocks.js';
import type { EquipmentCheckLine, EquipmentRecallView } from './equipment-recall-view.js';
import { windowSection } from './window-section.js';

const STATEMENT =
  'States what the builder recorded of this equipment and what was done with it. What is suspect may be right all the ' +
  'same. Not a calibration certificate, a certificate of compliance, a survey, a warranty or a title document.';

const SAYS =
  'Values stay as they were recorded: they are suspect, which is to say that it has to be determined whether they still ' +
  'hold. A window opens after the last good check and reaches over the bad one up to the next good check of the same kind.';

/**
 * Draws the recall list of a piece of equipment as a PDF: its checks, each time in which it may have been unfit, and all
 * that was read or sprayed with it then.
 *
 * @throws TypeError when `created` is no date
 */
export const drawEquipmentRecall = (view: EquipmentRecallView, created: Date): Readable =>
  drawPaper(
    view,
    {
      name: 'Equipment recall list',
      of: 'equipment',
      code: view.equipment,
      statement: STATEMENT,
      keywords: [view.kind],
    },
    created,
    (fonts) => sections(fonts, view),
  );

function* sections(fonts: Fonts, view: EquipmentRecallView): Generator<Section> {
  const suspect = view.windows.reduce((sum, { readings, drawn }) => sum + readings.length + drawn.length, 0);
  yield [
    titleFacts(fonts, view, [
      ['Equipment', view.equipment, 'code-bold'],
      ['Kind', view.kind],
      ['Description', view.description],
      ['Source', view.source],
    ]),
    stamp(fonts, [para(summary(view.windows.length, suspect), 'bold')], view.windows.length === 0),
    text(fonts, [para(SAYS)], 7),
  ];
  yield listed(
    fonts,
    'Checks',
    tableOf(view.checks, (rows) => checksTable(fonts, rows)),
    'No checks of this equipment are recorded.',
  );
  for (const window of view.windows) yield windowSection(fonts, window);
}

const summary = (windows: number, suspect: number): string => {
  if (windows === 0) return 'No check was bad: nothing is to be looked at again.';
  const spans = windows === 1 ? '1 window' : `${windows} windows`;
  return `${spans} in which it may have been unfit; ${suspect} ${suspect === 1 ? 'entry' : 'entries'} to be looked at again.`;
};

const checksTable = (fonts: Fonts, checks: readonly EquipmentCheckLine[]): Block =>
  table(
    fonts,
    [
      { title: 'When, by', share: 0.22 },
      { title: 'What was checked', share: 0.24 },
      { title: 'Found', share: 0.22 },
      { title: 'Check', share: 0.08 },
      { title: 'Disposition', share: 0.24 },
    ],
    checks.map(({ when, what, found, good, by, note, disposition }) => [
      { paragraphs: [para(when, 'note'), para(by, 'code-note')] },
      { paragraphs: [para(what), ...(note === null ? [] : [para(note, 'note')])] },
      cell(found),
      cell(good ? 'good' : 'BAD', good ? 'body' : 'bold'),
      cell(disposition ?? (good ? '' : 'open, no disposition'), disposition === null ? 'bold' : 'body'),
    ]),
  );
