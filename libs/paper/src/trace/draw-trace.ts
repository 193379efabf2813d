import type { Readable } from 'node:stream';
import type { Fonts } from '../fonts.js';
import { drawPaper, type Section } from '../papers/draw-paper.js';
import { listed, tableOf } from '../papers/sections.js';
import { titleFacts } from '../papers/title-facts.js';
import { para } from '../paragraph.js';
import { cell, table } from '../table.js';
import { text } from '../text-blocks.js';
import { traceFigure } from './trace-figure.js';
import type { TraceView } from './trace-view.js';

const STATEMENT =
  'States where the builder recorded that this lot went. A hull named here is associated with the lot, which is not to say ' +
  'that the lot led to anything. Not a certificate of the material or of compliance, a survey, a warranty or a title document.';

const WIDTHS =
  'Received lots on the left, then tanks, mixtures and kits, hulls on the right. Bars and ribbons are kilograms of this lot, on ' +
  'one scale; less goes out than came in where some was left or lost.';

/**
 * Draws where a lot went as a PDF: the drawing, then every lot and hull in a table.
 *
 * @throws TypeError when `created` is no date
 */
export const drawTracePaper = (view: TraceView, created: Date): Readable =>
  drawPaper(
    view,
    { name: 'Trace', of: 'lot', code: view.lot, statement: STATEMENT, keywords: ['trace'] },
    created,
    (fonts) => sections(fonts, view),
  );

function* sections(fonts: Fonts, view: TraceView): Generator<Section> {
  yield [
    titleFacts(fonts, view, [['Lot', view.lot, 'code-bold'], ...view.identity]),
    text(fonts, [para(view.says, 'bold'), ...(view.leftOut === null ? [] : [para(view.leftOut, 'bold')])], 7),
  ];
  yield listed(
    fonts,
    'Where it went',
    [traceFigure(fonts, view), text(fonts, [para(WIDTHS, 'note'), para(view.assumes, 'note')])],
    'Nothing is known.',
  );
  yield listed(
    fonts,
    'Lots and hulls',
    tableOf(view.rows, (rows) =>
      table(
        fonts,
        [
          { title: 'Lot, hull or part', share: 0.25 },
          { title: 'What', share: 0.2 },
          { title: 'Of this lot', share: 0.14, align: 'right' },
          { title: 'Share', share: 0.13, align: 'right' },
          { title: 'Basis', share: 0.12 },
          { title: 'Now', share: 0.16 },
        ],
        rows.map((row) => [
          cell(row.code, 'code-bold'),
          cell(row.what),
          cell(row.kg, 'code'),
          cell(row.share, 'code'),
          cell(row.basis),
          cell(row.now, 'note'),
        ]),
      ),
    ),
    'Nothing was made of it, and no hull holds it.',
  );
}
