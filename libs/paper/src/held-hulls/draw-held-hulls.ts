import type { Readable } from 'node:stream';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { drawPaper, type Section } from '../papers/draw-paper.js';
import { listed, tableOf } from '../papers/sections.js';
import { titleFacts } from '../papers/title-facts.js';
import { para } from '../paragraph.js';
import { cell, table } from '../table.js';
import { stamp, text } from '../text-blocks.js';
import type { HeldHullsView, HeldHullView } from './held-hulls-view.js';

const STATEMENT =
  'States which hulls the builder recorded as reached by this hold, and what is recorded of each. A hull on it is not ' +
  'known to be faulty. Not a notice of a defect, a certificate of compliance, a survey, a warranty or a title document.';

const SAYS =
  'A share is kilograms of what is held / kilograms of all lots of the same role in the layer where it is largest, and ' +
  'assumes a well-mixed tank. Found: the fault is in it. Checked: looked at, no fault. Cleared: judged not to be concerned.';

/**
 * Draws the list of hulls that a hold reaches as a PDF, each with its disposition.
 *
 * @throws TypeError when `created` is no date
 */
export const drawHeldHulls = (view: HeldHullsView, created: Date): Readable =>
  drawPaper(
    view,
    { name: 'List of held hulls', of: 'hold', code: view.thing, statement: STATEMENT, keywords: [view.kind] },
    created,
    (fonts) => sections(fonts, view),
  );

function* sections(fonts: Fonts, view: HeldHullsView): Generator<Section> {
  yield [
    titleFacts(fonts, view, [
      ['On hold', view.thing, 'code-bold'],
      ['Kind', view.kind],
      ['Reason', view.reason],
      ['Placed', view.placed],
      ['Reaches', view.scopes.join(' ')],
      ['Ended', view.ended],
    ]),
    stamp(fonts, [para(view.summary, 'bold')], view.complete),
    text(fonts, [para(SAYS)], 7),
  ];
  yield listed(
    fonts,
    'Hulls it reaches',
    tableOf(view.reached, (rows) => hullsTable(fonts, rows)),
    'It reaches no hull.',
  );
  if (view.out.length > 0)
    yield listed(fonts, 'Reached when it was placed, and no more', [hullsTable(fonts, view.out)], '');
}

const hullsTable = (fonts: Fonts, rows: readonly HeldHullView[]): Block =>
  table(
    fonts,
    [
      { title: 'Hull, HIN, model', share: 0.24 },
      { title: 'Share', share: 0.12 },
      { title: 'Where it is', share: 0.22 },
      { title: 'When it was placed', share: 0.14 },
      { title: 'Disposition', share: 0.28 },
    ],
    rows.map(({ hull, hin, model, share, where, left, atHold, said, disposed }) => [
      {
        paragraphs: [para(hull, 'code-bold'), ...(hin === null ? [] : [para(hin, 'code-note')]), para(model, 'note')],
      },
      cell(share),
      { paragraphs: [para(where), para(left === null ? 'has not left the plant' : `left ${left}`, 'note')] },
      cell(atHold),
      {
        paragraphs: [
          ...said.map((each) => para(each)),
          ...(disposed ? [] : [para('OPEN', 'bold')]),
          ...(disposed && said.length === 0 ? [para('scrapped')] : []),
        ],
      },
    ]),
  );
