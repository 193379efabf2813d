import type { Readable } from 'node:stream';
import type { Block } from '../flow.js';
import { facts } from '../facts.js';
import type { Fonts } from '../fonts.js';
import { drawPaper, type Section } from '../papers/draw-paper.js';
import { listed, sectionHeading, tableOf } from '../papers/sections.js';
import { titleFacts } from '../papers/title-facts.js';
import { para } from '../paragraph.js';
import { cell, table } from '../table.js';
import { stamp, text } from '../text-blocks.js';
import { groupBlocks, monthsBlocks } from './ahead-section.js';
import { crudeBlocks, doseBlocks, forestTable, memberBlocks } from './classes-section.js';
import type { InquiryView } from './inquiry-view.js';
import { placesBlocks } from './places-figure.js';
import { triangleFigure } from './triangle-figure.js';

const STATEMENT =
  'States what claimed hulls have in common by settings that were frozen first: what they are associated with, which is ' +
  'not to say that it led to anything. Not a finding of fault, a certificate, a survey, a warranty or a title document.';

/**
 * Draws the report of a look at a case as a PDF: what was found and how sure, the triangle first, and how to work it out again.
 *
 * @throws TypeError when `created` is no date
 */
export const drawInquiry = (view: InquiryView, created: Date): Readable =>
  drawPaper(
    view,
    {
      name: 'Inquiry report',
      of: 'case',
      code: view.case,
      statement: view.counsel === null ? STATEMENT : `${view.counsel} ${STATEMENT}`,
      keywords: [view.title],
    },
    created,
    (fonts) => sections(fonts, view),
  );

function* sections(fonts: Fonts, view: InquiryView): Generator<Section> {
  yield opening(fonts, view);
  yield listed(
    fonts,
    'Claims by build month and months in service',
    view.triangle === null ? [] : triangleFigure(fonts, view.triangle),
    'No hull is at risk, so there is no triangle.',
  );
  yield [sectionHeading(fonts, 'Hulls that are compared'), facts(fonts, view.hulls)];
  yield [sectionHeading(fonts, 'How it is judged'), facts(fonts, view.settings)];
  yield classes(fonts, view);
  yield untestable(fonts, view);
  yield cover(fonts, view);
  yield apart(fonts, view);
  yield listed(
    fonts,
    'Where on the hull',
    view.places === null ? [] : placesBlocks(fonts, view.places),
    'No place of a claim that counts is known.',
  );
  yield ahead(fonts, view);
  yield listed(fonts, 'What the data cannot say', sentences(fonts, view.cannotSay), 'Nothing was noted.');
  yield listed(fonts, 'What would settle it', sentences(fonts, view.next), 'Nothing was noted.');
  yield methods(fonts, view);
}

const opening = (fonts: Fonts, view: InquiryView): readonly Block[] => [
  titleFacts(fonts, view, [
    ['Case', view.case, 'code-bold'],
    ['Title', view.title],
    ['Look', view.look],
  ]),
  ...(view.counsel === null ? [] : [stamp(fonts, [para(view.counsel, 'bold')], false)]),
  stamp(
    fonts,
    [para(view.verdict, 'bold'), ...view.sentences.map((each) => para(each)), para(view.exploratory.says, 'bold')],
    !view.exploratory.is,
  ),
];

const sentences = (fonts: Fonts, all: readonly string[]): readonly Block[] =>
  all.length === 0
    ? []
    : [
        text(
          fonts,
          all.map((each) => para(each)),
        ),
      ];

const classes = (fonts: Fonts, view: InquiryView): readonly Block[] => [
  sectionHeading(fonts, 'Lots compared'),
  text(fonts, [para(view.tests)], 2, true),
  ...tableOf(view.classes, (rows) => forestTable(fonts, rows)),
  ...crudeBlocks(fonts, view.classes),
  ...memberBlocks(fonts, view.classes),
  ...doseBlocks(fonts, view.classes),
];

const untestable = (fonts: Fonts, { untestable: { says, rows } }: InquiryView): readonly Block[] => [
  sectionHeading(fonts, 'Lots that cannot be judged'),
  text(fonts, [para(says)], 2, rows.length > 0),
  ...tableOf(rows, (all) =>
    table(
      fonts,
      [
        { title: 'Class', share: 0.4 },
        { title: 'Hulls with it', share: 0.2 },
        { title: 'With a claim', share: 0.2 },
        { title: 'Smallest p it can reach', share: 0.2 },
      ],
      all.map(({ named, hulls, observed, p }) => [
        cell(named, 'code-bold'),
        cell(hulls, 'code'),
        cell(observed, 'code'),
        cell(p, 'code'),
      ]),
    ),
  ),
];

const cover = (fonts: Fonts, { cover: { steps, unexplained } }: InquiryView): readonly Block[] => [
  ...listed(
    fonts,
    'Lots that together go with most claims',
    tableOf(steps, (all) =>
      table(
        fonts,
        [
          { title: 'Step', share: 0.1 },
          { title: 'Class', share: 0.35 },
          { title: 'Claims it goes with', share: 0.2 },
          { title: 'Runner-up', share: 0.35 },
        ],
        all.map(({ named, explains, runnerUp }, i) => [
          cell(String(i + 1), 'code'),
          cell(named, 'code-bold'),
          cell(explains, 'code'),
          cell(runnerUp),
        ]),
      ),
    ),
    'No class goes with more than one claim.',
  ),
  text(fonts, [para(unexplained)]),
];

const apart = (fonts: Fonts, view: InquiryView): readonly Block[] =>
  listed(
    fonts,
    'What else they have in common',
    tableOf(view.apart, (rows) => forestTable(fonts, rows)).flatMap((block) => [
      text(fonts, [para('Tested and corrected among themselves, never among the lots. No people.', 'note')], 2, true),
      block,
      ...crudeBlocks(fonts, view.apart),
    ]),
    'Nothing else was compared.',
  );

const ahead = (fonts: Fonts, { ahead: view }: InquiryView): readonly Block[] =>
  listed(
    fonts,
    'By age, and how many more to expect',
    view === null
      ? []
      : [
          facts(fonts, view.says),
          ...groupBlocks(fonts, view.groups),
          ...monthsBlocks(fonts, view),
          text(fonts, [para(view.cannotSay, 'note')]),
        ],
    'No hull is at risk, so nothing is forecast.',
  );

const methods = (fonts: Fonts, view: InquiryView): readonly Block[] => [
  ...listed(
    fonts,
    'Methods and their sources',
    tableOf(view.methods, (rows) =>
      table(
        fonts,
        [
          { title: 'What', share: 0.2 },
          { title: 'How', share: 0.46 },
          { title: 'Source', share: 0.34 },
        ],
        rows.map(({ what, how, source }) => [cell(what, 'bold'), cell(how), cell(source, 'note')]),
      ),
    ),
    'None is named.',
  ),
  sectionHeading(fonts, 'To work it out again'),
  facts(
    fonts,
    view.again.map(([label, value]) => [label, value, /^[0-9a-f]{64}$/.test(value) ? 'code' : 'body']),
  ),
];
