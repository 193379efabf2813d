import { describe, expect, it } from '@jest/globals';
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { anEmptyView, aView } from '../../support/paper-views.js';
import { draw, openPaper, readPages, solid } from '../../support/read-pdf.js';

const inOrder = (text: string, parts: readonly string[]): void => {
  let from = 0;
  for (const part of parts) {
    const at = text.indexOf(part.replace(/\s/gu, ''), from);
    expect({ part, found: at >= 0 }).toEqual({ part, found: true });
    from = at + 1;
  }
};

describe('the text of a build record', () => {
  it('reads from the hull number to the cautions in the order of the paper', async () => {
    inOrder(solid(await readPages(await draw(aView()))), [
      'Build record',
      'TS86-147',
      'TRZ86147K627',
      'manufacturer TRZ, serial 86147',
      'Not complete: 5 layers are to be made',
      'HIN assigned',
      'Hull molding, part H-0147',
      'Laminate section, outside in',
      '1 Gel coat, white 02',
      '8 Inner coat',
      'L-07, L-11',
      'SG-8907',
      'TG-2611-04 (81 %)',
      '16 to 22 mil (406 to 559 µm)',
      'inside',
      'outside',
      'cannot be judged',
      'no limit',
      'Hold point 1',
      'Corrected: amount of SG-8907 was 65.4 kg',
      'each spot ≥ 36',
      'not signed',
      'air bubble (void)',
      'Scale 1:62',
      'Repair R-207',
      'Q-03, Wed 25 Nov 2026 14:20',
      'open, no disposition',
      'Deck molding, part D-0151',
      'BP-0331',
      'digits were swapped',
      'ASTM D4414, wet film thickness',
      'Laminate and gel coat dust',
      'data sheets and local codes come first.',
    ]);
  });

  it('says on every page which hull, as of when, which page, and what the paper is not', async () => {
    const pages = await readPages(await draw(aView()));
    pages.forEach((page, i) => {
      const text = solid([page]);
      expect(text).toContain('HullTS86-147·Buildrecord·stateasofThu26Nov202609:30(UTC−05:00)');
      expect(text).toContain(`page${i + 1}`);
      expect(text).toContain('Notatitledocument,Builder’sCertification,statementoforigin');
      expect(text).toContain('orstatementoffitnessorcompliance.');
    });
  });

  it('says of an empty hull in sentences that nothing is there', async () => {
    const text = solid(await readPages(await draw(anEmptyView())));
    inOrder(text, [
      'none assigned yet',
      'No facts of the hull’s life are recorded yet.',
      'No layer of this part has been made yet.',
      'No defects are recorded for this part.',
      'No mark.',
      'No repairs are recorded for this part.',
      'No nonconformities are recorded for this part.',
      'No parts have been joined to this hull yet.',
      'No facts of this hull have been corrected.',
    ]);
  });

  it('says of a hull without parts that none has been started', async () => {
    const text = solid(await readPages(await draw(aView({ parts: [] }))));
    expect(text).toContain('Nopartofthishullhasbeenstartedyet.');
  });
});

describe('the structure of a build record', () => {
  const structure = async (paper: PDFDocumentProxy): Promise<string> => {
    const trees = [];
    for (let n = 1; n <= paper.numPages; n += 1) trees.push(await (await paper.getPage(n)).getStructTree());
    return JSON.stringify(trees);
  };

  it('is tagged, with headings, tables and figures that say what they show', async () => {
    const paper = await openPaper(await draw(aView()));
    const tree = await structure(paper);
    for (const role of ['Document', 'Sect', 'H1', 'H2', 'H3', 'H4', 'Table', 'TR', 'TH', 'TD', 'Figure', 'P']) {
      expect(tree).toContain(`"role":"${role}"`);
    }
    expect(tree).toContain('Band of layer 2, Skin coat: hatch of mat, made.');
    expect(tree).toMatch(/Scale 1:62\. 5 marks\. A girth-by-station expansion/);
    const { info } = await paper.getMetadata();
    expect(info).toMatchObject({
      Title: 'Build record of hull TS86-147',
      Author: 'Tarrow Sound Boats',
      Language: 'en',
    });
  });

  it('has a bookmark for each part', async () => {
    const outline = await (await openPaper(await draw(aView()))).getOutline();
    expect(outline.map(({ title }) => title)).toEqual(['Hull molding, part H-0147', 'Deck molding, part D-0151']);
  });
});
