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

const NO_MORE = 'Not a certificate of the material or of compliance, a survey, a warranty or a title document.';

/** What a trace says in its own words: of a lot, of hulls. */
const WORDS = {
  lot: {
    statement:
      'States where the builder recorded that this lot went. A hull named here is associated with the lot, which is not to say ' +
      `that the lot led to anything. ${NO_MORE}`,
    widths:
      'Received lots on the left, then tanks, mixtures and kits, hulls on the right. Bars and ribbons are kilograms of this lot, on ' +
      'one scale; less goes out than came in where some was left or lost.',
    ...{
      name: 'Lot',
      drawing: 'Where it went',
      table: 'Lots and hulls',
      first: 'Lot, hull or part',
      mass: 'Of this lot',
    },
    nothing: 'Nothing was made of it, and no hull holds it.',
  },
  hulls: {
    statement:
      'States what the builder recorded as used in the hull, and the received lots behind it. A lot named here is associated with ' +
      `the hull, which is not to say that it led to anything. ${NO_MORE}`,
    widths:
      'Received lots on the left, then tanks, mixtures and kits, hulls on the right. Bars and ribbons are kilograms that are in ' +
      'these hulls, on one scale.',
    ...{ name: 'Hull', drawing: 'Where it came from', table: 'Lots', first: 'Lot', mass: 'In these hulls' },
    nothing: 'Nothing is recorded as used in it.',
  },
};

/**
 * Draws where a lot went, or where what is in hulls came from, as a PDF: the drawing, then a table.
 *
 * @throws TypeError when `created` is no date
 */
export const drawTracePaper = (view: TraceView, created: Date): Readable =>
  drawPaper(
    view,
    {
      ...{ name: 'Trace', of: WORDS[view.of].name.toLowerCase(), code: view.code },
      ...{ statement: WORDS[view.of].statement, keywords: ['trace'] },
    },
    created,
    (fonts) => sections(fonts, view),
  );

function* sections(fonts: Fonts, view: TraceView): Generator<Section> {
  const words = WORDS[view.of];
  yield [
    titleFacts(fonts, view, [[words.name, view.code, 'code-bold'], ...view.identity]),
    text(fonts, [para(view.says, 'bold'), ...(view.leftOut === null ? [] : [para(view.leftOut, 'bold')])], 7),
  ];
  yield listed(
    fonts,
    words.drawing,
    [traceFigure(fonts, view), text(fonts, [para(words.widths, 'note'), para(view.assumes, 'note')])],
    'Nothing is known.',
  );
  yield listed(
    fonts,
    words.table,
    tableOf(view.rows, (rows) =>
      table(
        fonts,
        [
          { title: words.first, share: 0.25 },
          { title: 'What', share: 0.2 },
          { title: words.mass, share: 0.14, align: 'right' },
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
    words.nothing,
  );
}
