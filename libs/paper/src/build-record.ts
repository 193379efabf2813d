import type { Readable } from 'node:stream';
import type { BuildRecordView } from './build-record-view.js';
import { closingSection } from './closing-section.js';
import { openDocument } from './document.js';
import { drawInSteps, type Steps } from './draw-in-steps.js';
import { flow, type Block } from './flow.js';
import { openFonts } from './fonts.js';
import { partSection } from './part-section.js';
import { openSheet, type Sheet } from './sheet.js';
import { open, type Element } from './tags.js';
import { nothing } from './facts.js';
import { titleSection } from './title-section.js';

/** Printed at the foot of every page. */
const STATEMENT =
  'States what the builder recorded for this hull. Not a title document, Builder’s Certification, statement of ' +
  'origin, declaration of conformity, survey, warranty, or statement of fitness or compliance.';

/**
 * Draws the build record of a hull as a PDF, ready to be read; one with many photos is drawn on while it is read.
 *
 * The same view and the same `created` give the same bytes on the same versions of PDFKit and zlib, whatever the time
 * zone or the hour. Any text prints: what no font has prints as its code point. A4, tagged, fonts embedded, one
 * bookmark a part. Throws a TypeError when `created` is no date.
 */
export const drawBuildRecord = (view: BuildRecordView, created: Date): Readable => {
  if (Number.isNaN(created.getTime())) throw new TypeError('The moment the paper is made must be a date.');
  const doc = openDocument(
    {
      title: `Build record of hull ${view.hullNumber}`,
      author: view.plantName,
      subject: `State as of ${view.stateAsOf.text}. ${view.completeness}`,
      keywords: ['build record', view.hullNumber, ...(view.hin === null ? [] : [view.hin.text]), view.model].join(', '),
    },
    created,
  );
  const fonts = openFonts(doc);
  const sheet = openSheet(doc, fonts, {
    head: `Hull ${view.hullNumber}  ·  Build record  ·  state as of ${view.stateAsOf.text}`,
    foot: [view.plantName, STATEMENT],
  });
  return drawInSteps(doc, steps(sheet, view));
};

function* steps(sheet: Sheet, view: BuildRecordView): Steps {
  const { doc, fonts } = sheet;
  const root = doc.struct('Document');
  doc.addStructure(root);
  yield* section(sheet, root, titleSection(fonts, view));
  if (view.parts.length === 0)
    yield* section(sheet, root, [nothing(fonts, 'No part of this hull has been started yet.')]);
  for (const part of view.parts) yield* section(sheet, root, partSection(fonts, part));
  yield* section(sheet, root, closingSection(fonts, view));
  root.end();
}

function* section(sheet: Sheet, root: Element, blocks: Iterable<Block>): Steps {
  const element = open(sheet.doc, root, 'Sect');
  yield* flow(sheet, element, blocks);
  element.end();
}
