import type { Readable } from 'node:stream';
import { bookmark } from '../bookmark.js';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { drawPaper, type Section } from '../papers/draw-paper.js';
import { facts, nothing } from '../facts.js';
import { para } from '../paragraph.js';
import { startPage } from '../sheet.js';
import { cell, table } from '../table.js';
import { heading, stamp, text } from '../text-blocks.js';
import type { LettersView, LetterView } from './notice-view.js';
import { noticeText } from './notice-text.js';

const STATEMENT =
  "A draft of the builder's notice of a defect (46 USC 4310, 33 CFR 179). It holds personal data: keep it as such. Not a " +
  'certificate of compliance, a survey, a warranty or a title document.';

/**
 * Draws the letters of a notice as one PDF, each from the top of a page, to be looked at and mailed.
 *
 * @throws TypeError when `created` is no date
 */
export const drawLetters = (view: LettersView, created: Date): Readable =>
  drawPaper(
    view,
    {
      name: 'Letters of notice',
      of: 'notice',
      code: view.notice,
      statement: STATEMENT,
      keywords: ['notice of a defect'],
    },
    created,
    (fonts) => sections(fonts, view),
  );

function* sections(fonts: Fonts, view: LettersView): Generator<Section> {
  yield [
    stamp(fonts, [para('DRAFT', 'bold'), para(view.says)], false),
    facts(fonts, view.counts, 9),
    ...(view.letters.length === 0 ? [nothing(fonts, 'The notice goes to nobody.')] : []),
  ];
  for (const letter of view.letters) yield [nextPage, ...letterBlocks(fonts, view, letter)];
}

const nextPage: Block = { before: 0, lead: 0, draw: startPage };

const letterBlocks = (fonts: Fonts, view: LettersView, letter: LetterView): readonly Block[] => [
  text(
    fonts,
    letter.to.map((line) => para(line)),
    24,
  ),
  text(fonts, [para(`As ${letter.as} of ${letter.boats.map(({ hull }) => hull).join(', ')}`, 'note')], 6),
  heading(fonts, view.title, {
    ...{ level: 2, style: 'section', before: 18 },
    onDraw: ({ doc, y }) => bookmark(doc, letter.to[0] ?? '', y),
  }),
  table(
    fonts,
    [
      { title: 'Hull', share: 0.3 },
      { title: 'Hull identification number', share: 0.4 },
      { title: 'Model', share: 0.3 },
    ],
    letter.boats.map(({ hull, hin, model }) => [
      cell(hull, 'code-bold'),
      cell(hin ?? 'none on record', 'code'),
      cell(model),
    ]),
  ),
  ...noticeText(fonts, view.text),
];
