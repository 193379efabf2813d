import type { Readable } from 'node:stream';
import { facts, nothing } from '../facts.js';
import type { Fonts } from '../fonts.js';
import { drawPaper, type Section } from '../papers/draw-paper.js';
import { listed, sectionHeading, tableOf } from '../papers/sections.js';
import { titleFacts } from '../papers/title-facts.js';
import { para } from '../paragraph.js';
import { cell, table } from '../table.js';
import { stamp, text } from '../text-blocks.js';
import type { AuthorityReportView } from './notice-view.js';
import { noticeText } from './notice-text.js';

const STATEMENT =
  'A draft of a report to the authority on a notice of a defect. It computes and drafts; the responsible person and counsel ' +
  'decide. Not a certificate of compliance, a survey, a warranty or a title document.';

/**
 * Draws the draft of the initial report (33 CFR 179.13) or of the follow-up (179.15) as a PDF.
 *
 * @throws TypeError when `created` is no date
 */
export const drawAuthorityReport = (view: AuthorityReportView, created: Date): Readable =>
  drawPaper(
    view,
    {
      name: view.name,
      of: 'notice',
      code: view.notice,
      statement: STATEMENT,
      keywords: ['notice of a defect', view.source],
    },
    created,
    (fonts) => sections(fonts, view),
  );

function* sections(fonts: Fonts, view: AuthorityReportView): Generator<Section> {
  yield [
    titleFacts(fonts, view, [
      ['Notice', view.notice, 'code-bold'],
      ['Source', view.source],
    ]),
    stamp(fonts, [para('DRAFT', 'bold'), para(view.says)], false),
  ];
  yield [sectionHeading(fonts, 'What is reported'), facts(fonts, view.facts, 0)];
  yield listed(
    fonts,
    'Not known yet',
    view.missing.length === 0
      ? []
      : [
          text(
            fonts,
            view.missing.map((each) => para(each)),
          ),
        ],
    'Nothing that the rule asks for is missing.',
  );
  yield listed(
    fonts,
    'Principal events',
    tableOf(view.chronology, (rows) =>
      table(
        fonts,
        [
          { title: 'Day', share: 0.2 },
          { title: 'What happened', share: 0.8 },
        ],
        rows.map(({ day, what }) => [cell(day, 'code'), cell(what)]),
      ),
    ),
    'None is recorded.',
  );
  yield [
    sectionHeading(fonts, 'Copy of the notice'),
    ...(view.text.defect === '' ? [nothing(fonts, 'There is none.')] : noticeText(fonts, view.text)),
  ];
}
