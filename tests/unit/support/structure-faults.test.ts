import { buffer } from 'node:stream/consumers';
import { describe, expect, it } from '@jest/globals';
import PDFDocument from 'pdfkit';
import { structureFaults } from '../../support/papers/structure-faults.js';

/** The faults of a tagged page with a rule on it, and what is drawn besides. */
const faultsOf = async (draw: (doc: PDFKit.PDFDocument, root: PDFKit.PDFStructureElement) => void) => {
  const doc = new PDFDocument({ tagged: true, info: { CreationDate: new Date(0) } });
  const root = doc.struct('Document');
  doc.addStructure(root);
  root.add(doc.markStructureContent('P'));
  doc.moveTo(10, 10).lineTo(20, 20).stroke();
  doc.endMarkedContent();
  draw(doc, root);
  root.end();
  doc.end();
  return structureFaults(await buffer(doc as unknown as AsyncIterable<Buffer>));
};

describe('the check of the structure of a paper', () => {
  it('finds nothing in a sound one', async () => {
    expect(await faultsOf(() => undefined)).toEqual([]);
  });

  it.each([
    ['a graphics state left open', (doc: PDFKit.PDFDocument) => doc.save(), 'a graphics state is left open'],
    [
      'marked content left open',
      (doc: PDFKit.PDFDocument) => doc.addContent('/Span BMC'),
      'marked content is left open',
    ],
    ['a text left open', (doc: PDFKit.PDFDocument) => doc.addContent('BT'), 'a text is left open'],
    [
      'content that no element holds',
      (doc: PDFKit.PDFDocument) => {
        doc.markStructureContent('P');
        doc.endMarkedContent();
      },
      'content 1 is not in the tree',
    ],
  ])('finds %s', async (_name, draw, fault) => {
    const faults = await faultsOf(draw);
    expect(faults.join('\n')).toContain(fault);
  });
});
