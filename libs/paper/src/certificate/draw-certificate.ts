import type { Readable } from 'node:stream';
import { facts, nothing } from '../facts.js';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { para } from '../paragraph.js';
import { openDocument } from '../document.js';
import { drawInSteps, type Steps } from '../draw-in-steps.js';
import { flow } from '../flow.js';
import { openFonts } from '../fonts.js';
import { openSheet } from '../sheet.js';
import { cell, table } from '../table.js';
import { open } from '../tags.js';
import { heading, text } from '../text-blocks.js';
import type { CertificateSeal, CertificateView } from './certificate-view.js';
import { factsOf, headOf, WORDS } from './certificate-words.js';
import { sealBlock } from './seal-block.js';

/** Columns of the layers of a part. */
const COLUMNS = [0.2, 0.34, 0.13, 0.33].map((share, i) => ({ title: WORDS.columns[i] ?? '', share }));

/** Values set as codes are. */
const CODES = new Set<string>([WORDS.facts[1], WORDS.facts[2], WORDS.facts[5]]);

/** Draws a certificate; whoever words it sees to it that it is one page. The same view and seal give the same bytes. */
export const drawCertificate = (view: CertificateView, seal: CertificateSeal, created: Date): Readable => {
  const name = `Certificate ${view.number}, issue ${view.issue}`;
  const doc = openDocument(
    {
      title: `${name}, hull ${view.hull}`,
      author: view.plant,
      subject: view.statement,
      keywords: `certificate, ${view.number}, ${view.hull}`,
    },
    created,
  );
  const fonts = openFonts(doc);
  const sheet = openSheet(doc, fonts, { head: headOf(view), foot: [view.statement] });
  return drawInSteps(doc, steps(sheet, blocksOf(fonts, view, seal, created)));
};

function* steps(sheet: ReturnType<typeof openSheet>, blocks: readonly Block[]): Steps {
  const { doc } = sheet;
  const root = doc.struct('Document');
  doc.addStructure(root);
  const element = open(doc, root, 'Sect');
  yield* flow(sheet, element, blocks);
  element.end();
  root.end();
}

const blocksOf = (fonts: Fonts, view: CertificateView, seal: CertificateSeal, created: Date): readonly Block[] => [
  heading(fonts, WORDS.title, { level: 1, style: 'title', before: 0 }),
  facts(
    fonts,
    factsOf(view).map((value, i) => {
      const label = WORDS.facts[i] ?? '';
      return CODES.has(label) ? [label, value, 'code-bold'] : [label, value];
    }),
    4,
  ),
  ...view.parts.flatMap(({ part, kind, layers }) => [
    section(fonts, `${kind} ${part}, outside in`),
    table(
      fonts,
      COLUMNS,
      layers.map((layer) => [cell(layer.name, 'bold'), cell(layer.materials), cell(layer.made), cell(layer.readings)]),
      { before: 1 },
    ),
  ]),
  section(fonts, WORDS.repaired[0]),
  listed(fonts, view.repaired, WORDS.repaired[1]),
  section(fonts, WORDS.concessions[0]),
  listed(fonts, view.concessions, WORDS.concessions[1]),
  ...(view.leftOut.length === 0
    ? []
    : [
        text(
          fonts,
          view.leftOut.map((each) => para(each, 'note')),
        ),
      ]),
  sealBlock(fonts, view, seal, created),
];

const section = (fonts: Fonts, words: string): Block => heading(fonts, words, { level: 2, style: 'group', before: 7 });

const listed = (fonts: Fonts, sentences: readonly string[], none: string): Block =>
  sentences.length === 0
    ? nothing(fonts, none)
    : text(
        fonts,
        sentences.map((each) => para(each)),
        1,
      );
