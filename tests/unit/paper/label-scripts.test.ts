import { describe, expect, it } from '@jest/globals';
import { LABEL_STOCK, LABEL_STOCK_NAMES, type LabelStock } from '@hull-record/trade';
import { aLabel, drawn } from '../../support/label-views.js';
import { shownGlyphs } from '../../support/papers/glyphs.js';
import { asRead, AS_CODE_POINTS, UNPRINTED, WRITINGS } from '../../support/papers/scripts.js';
import { liesIn, MM, overlap, placeBoxes, readLabelTexts } from '../../support/read-labels.js';

const ROLLS = LABEL_STOCK_NAMES.map((name) => [name, LABEL_STOCK[name] as LabelStock] as const);

describe.each(ROLLS)('labels on %s', (_name, stock) => {
  it('hold names in any script, read back as they were written, each in its own place', async () => {
    const labels = WRITINGS.map(([, title]) => aLabel({ title, details: [], caution: null }));
    const bytes = await drawn(labels, stock);
    const pages = await readLabelTexts(bytes, stock);
    const places = placeBoxes(stock);
    labels.forEach(({ title }, i) => {
      const page = pages[Math.floor(i / places.length)];
      const place = places[i % places.length];
      if (page === undefined || place === undefined) throw new Error('There are too few pages.');
      const texts = page.filter((text) => overlap(text, place));
      expect(asRead(texts.map(({ text }) => text).join(''))).toContain(asRead(title));
      for (const text of texts) expect([text.text, liesIn(text, place, stock.insetMm * MM)]).toContain(true);
    });
    expect((await shownGlyphs(bytes)).filter(({ glyph }) => glyph === 0)).toEqual([]);
  });
});

describe('a long name on a label', () => {
  const stock = LABEL_STOCK['a4-70x37'];
  const words = async (title: string): Promise<string> => {
    const [page] = await readLabelTexts(await drawn([aLabel({ title })], stock), stock);
    return (page ?? []).map(({ text }) => text).join('');
  };

  it('in Chinese goes on on the next line wherever one is full', async () => {
    expect(await words('乙烯基酯树脂'.repeat(6))).toContain('乙烯基酯树脂'.repeat(6));
  });

  it('from right to left is cut short at its left end', async () => {
    const [page] = await readLabelTexts(await drawn([aLabel({ title: 'ורקה 12 '.repeat(40) })], stock), stock);
    const end = page?.find(({ text }) => text.includes('…'));
    const line = page?.filter(({ y }) => Math.abs(y - (end?.y ?? 0)) < 0.1) ?? [];
    expect(line.length).toBeGreaterThan(3);
    expect(end?.x).toBe(Math.min(...line.map(({ x }) => x)));
  });

  it('prints what no font has as code points', async () => {
    expect(asRead(await words(UNPRINTED))).toContain(AS_CODE_POINTS);
  });
});
