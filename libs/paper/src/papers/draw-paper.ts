import type { Readable } from 'node:stream';
import { openDocument } from '../document.js';
import { drawInSteps, type Steps } from '../draw-in-steps.js';
import { flow, type Block } from '../flow.js';
import { openFonts, type Fonts } from '../fonts.js';
import { openSheet, type Sheet } from '../sheet.js';
import { open } from '../tags.js';
import type { PaperSubject, PaperView } from './paper-view.js';
import { paperTitle } from './paper-title.js';

/** A part of the paper that hangs together, as blocks one below the other. */
export type Section = Iterable<Block>;

/**
 * Draws a paper of the house, ready to be read (a large one is drawn on while it is read): A4, tagged, fonts embedded, with head, foot and page numbers.
 *
 * The same view and the same `created` give the same bytes on the same versions of PDFKit and zlib. Any text prints:
 * what no font has prints as its code point.
 *
 * @param sections made one by one, so that pages can leave as they are drawn
 * @throws TypeError when `created` is no date
 */
export const drawPaper = (
  view: PaperView,
  subject: PaperSubject,
  created: Date,
  sections: (fonts: Fonts) => Iterable<Section>,
): Readable => {
  if (Number.isNaN(created.getTime())) throw new TypeError('The moment the paper is made must be a date.');
  const asOf = `state as of ${view.stateAsOf.text}`;
  const doc = openDocument(
    {
      title: `${subject.name} of ${subject.of} ${subject.code}`,
      author: view.plantName,
      subject: `${subject.name}, ${asOf}.`,
      keywords: [subject.name.toLowerCase(), subject.code, ...subject.keywords].join(', '),
    },
    created,
  );
  const fonts = openFonts(doc);
  const of = `${subject.of.charAt(0).toUpperCase()}${subject.of.slice(1)}`;
  const sheet = openSheet(doc, fonts, {
    head: `${of} ${subject.code}  ·  ${subject.name}  ·  ${asOf}`,
    foot: [view.plantName, subject.statement],
  });
  return drawInSteps(doc, steps(sheet, [paperTitle(fonts, view, subject)], sections(fonts)));
};

function* steps(sheet: Sheet, ...all: readonly Iterable<Section>[]): Steps {
  const { doc } = sheet;
  const root = doc.struct('Document');
  doc.addStructure(root);
  for (const sections of all)
    for (const blocks of sections) {
      const element = open(doc, root, 'Sect');
      yield* flow(sheet, element, blocks);
      element.end();
    }
  root.end();
}
