import { beforeAll, describe, expect, it } from '@jest/globals';
import { anExtremeView } from '../../support/extreme-paper-view.js';
import { aLayer, someReadings } from '../../support/paper-layers.js';
import { aHullPart, aView } from '../../support/paper-views.js';
import { draw, openPaper, readPages, solid, type PrintedText } from '../../support/read-pdf.js';

const MARGIN = (15 * 72) / 25.4;
const [WIDTH, HEIGHT] = [595.28, 841.89];
/** Sizes of headings in points; nothing else is set in them. */
const HEADING_SIZES = [10, 11.5, 15];

const contentOf = (page: readonly PrintedText[]): readonly PrintedText[] =>
  page.filter(({ y, size }) => y < HEIGHT - MARGIN - 14 && y > footOf(page) && size > 0);

/** The running foot begins with the line that holds the page number. */
const footOf = (page: readonly PrintedText[]): number => page.find(({ text }) => /^page \d+$/.test(text))?.y ?? 0;

const overlaps = (a: PrintedText, b: PrintedText): boolean =>
  a.x + 0.5 < b.x + b.width &&
  b.x + 0.5 < a.x + a.width &&
  a.y - 0.15 * a.size < b.y + 0.6 * b.size &&
  b.y - 0.15 * b.size < a.y + 0.6 * a.size;

describe('a hull with far too much on it', () => {
  let bytes: Buffer;
  let pages: readonly (readonly PrintedText[])[];
  beforeAll(async () => {
    bytes = await draw(anExtremeView());
    pages = await readPages(bytes);
  });

  it('loses no reading, no defect, no note and no name', () => {
    const text = solid(pages);
    expect(text.match(/L-07,Tue24Nov202608:10/g)).toHaveLength(400 + 6 + 2);
    for (let i = 1; i <= 60; i += 1) expect(text).toContain(`D${i}Kind`);
    for (let i = 0; i < 7; i += 1) {
      expect(text).toContain(`end${i}.`);
      expect(text).toContain(`Layer${i}${'x'.repeat(193)}!`);
    }
    expect(text.match(/word/g)).toHaveLength(7 * 900);
  });

  it('prints any writing as it is, and a sign that no font has as its code point', () => {
    const text = solid(pages);
    expect(text).toContain('船体记录مرحبابالعالمŁódźšķiedra≥36µm[U+1F6A4]');
  });

  it('names marks on the map or in the sentence under it, also those off the skin', () => {
    const text = solid(pages);
    expect(text).toContain('Notdrawn,theirplaceisnotonthisskin:OFF.');
    const page = pages.find((texts) => solid([texts]).includes('Scale1:62')) ?? [];
    for (let i = 1; i <= 60; i += 1) expect(solid([page])).toMatch(new RegExp(`D${i}(?!\\d)`));
  });

  it('has no page without content and none without its running head', () => {
    expect(pages.length).toBeGreaterThan(20);
    for (const page of pages) {
      expect(contentOf(page).length).toBeGreaterThan(0);
      expect(solid([page])).toContain('HullTS86-147·Buildrecord');
    }
  });

  it('keeps every text inside the margins and readable', () => {
    for (const { x, y, width, size } of pages.flat()) {
      expect(x).toBeGreaterThanOrEqual(MARGIN - 0.1);
      expect(x + width).toBeLessThanOrEqual(WIDTH - MARGIN + 0.5);
      expect(y).toBeGreaterThanOrEqual(MARGIN - 0.1);
      expect(y + 0.7 * size).toBeLessThanOrEqual(HEIGHT - MARGIN);
      expect(size).toBeGreaterThanOrEqual(8);
    }
  });

  it('prints no text over another', () => {
    for (const [i, page] of pages.entries()) {
      const clashes = page.flatMap((a, at) =>
        page
          .slice(at + 1)
          .filter((b) => overlaps(a, b))
          .map((b) => [i + 1, a.text, b.text]),
      );
      expect(clashes).toEqual([]);
    }
  });

  it('embeds every font it names', () => {
    const raw = bytes.toString('latin1');
    const fonts = raw.match(/\/Type \/FontDescriptor/g) ?? [];
    expect(fonts.length).toBeGreaterThanOrEqual(6);
    expect(raw.match(/\/FontFile[23]? \d+ 0 R/g)).toHaveLength(fonts.length);
    expect(raw).not.toMatch(/\/Subtype \/Type1\b/);
  });

  it('opens without a complaint', async () => {
    await expect(openPaper(bytes)).resolves.toBeDefined();
  });
});

describe('page ends', () => {
  it.each(Array.from({ length: 14 }, (_, i) => 3 + i * 3))(
    'never leave a heading alone below %i readings',
    async (count) => {
      const layers = ['1', '2', '3'].map((position) => aLayer({ position, readings: [someReadings(count)] }));
      const pages = await readPages(await draw(aView({ parts: [aHullPart({ layers })] })));
      for (const page of pages) {
        const content = contentOf(page);
        const lowest = content.reduce((low, text) => (text.y < low.y ? text : low));
        expect({ heading: HEADING_SIZES.includes(lowest.size), text: lowest.text }).toMatchObject({ heading: false });
      }
    },
  );

  it('repeat the heading of a table that goes on', async () => {
    const layers = [aLayer({ readings: [someReadings(120)] })];
    const pages = await readPages(await draw(aView({ parts: [aHullPart({ layers, defects: [], repairs: [] })] })));
    const withReadings = pages.filter((page) => solid([page]).includes('0.62mgirth'));
    expect(withReadings.length).toBeGreaterThan(3);
    for (const page of withReadings) expect(solid([page])).toContain('SpotValuePlaceVerdictBy,when');
  });
});
