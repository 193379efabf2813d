import { describe, expect, it } from '@jest/globals';
import { drawLabels, LabelTooSmall, type LabelView } from '@hull-record/paper';
import { LABEL_STOCK, LABEL_STOCK_NAMES, placesOf, type LabelStock } from '@hull-record/trade';
import { labelPath } from '@hull-record/contracts';
import { aLabel, drawn, severalLabels } from '../../support/label-views.js';
import {
  liesIn,
  MM,
  overlap,
  placeBoxes,
  readLabels,
  type LabelPage,
  type PageBox,
} from '../../support/read-labels.js';
import { openPaper } from '../../support/read-pdf.js';

/** What is printed in a place, without spaces. */
const wordsIn = (page: LabelPage, place: PageBox): string =>
  without(page.texts.flatMap((text) => (overlap(text, place) ? [text.text] : [])).join(''));

const without = (words: string): string => words.replace(/\s/gu, '');

/** Fails unless every text and code of a page lies in a place of its own, apart from the others, and none is too small. */
const expectSound = (page: LabelPage, stock: LabelStock): void => {
  const inset = stock.insetMm * MM;
  const places = placeBoxes(stock);
  for (const text of page.texts) {
    expect(text.size).toBeGreaterThanOrEqual(4.999);
    expect(places.some((place) => liesIn(text, place, inset))).toBe(true);
  }
  for (const [i, text] of page.texts.entries()) {
    for (const other of page.texts.slice(i + 1)) expect([text.text, other.text, overlap(text, other)]).toContain(false);
    for (const code of page.codes) expect([text.text, code.text, overlap(text, code)]).toContain(false);
  }
};

const LONG: readonly Partial<LabelView>[] = [
  { title: 'Isophthalic gel coat, white, low emission '.repeat(5).slice(0, 200) },
  { title: 'W'.repeat(200) },
  { title: '乙烯基酯树脂'.repeat(34).slice(0, 200) },
  { title: 'שרף ויניל אסטר '.repeat(14).slice(0, 200) },
  { title: 'Name '.repeat(40), details: ['Lot '.repeat(50), '中'.repeat(200)] },
  { code: 'W1234/8-'.repeat(8).slice(0, 60) },
  { code: 'Ü'.repeat(60) },
];

const BY_SIZE = LABEL_STOCK_NAMES.map((name) => [name, LABEL_STOCK[name] as LabelStock] as const);

describe.each(BY_SIZE)('labels on %s', (_, stock) => {
  it('are read back, codes and words, each in its own place', async () => {
    const labels = severalLabels(Math.max(placesOf(stock), 8));
    const pages = await readLabels(await drawn(labels, stock), stock);
    const places = placeBoxes(stock);
    expect(pages).toHaveLength(Math.ceil(labels.length / places.length));
    for (const page of pages) expectSound(page, stock);
    for (const [i, label] of labels.entries()) {
      const page = pages[Math.floor(i / places.length)] as LabelPage;
      const place = places[i % places.length] as PageBox;
      expect(page.codes.filter((code) => liesIn(code, place)).map(({ text }) => text)).toEqual([label.path]);
      const words = wordsIn(page, place);
      const printed = [label.kind, label.code, label.title, ...label.details, label.caution ?? ''].map(without);
      for (const text of printed) expect(words).toContain(text);
      expect(page.texts.filter((text) => overlap(text, place)).map(({ text }) => text)).toContain(label.code);
    }
  }, 60_000);

  it('are as large as the table says', async () => {
    const paper = await openPaper(await drawn([aLabel()], stock));
    const { width, height } = (await paper.getPage(1)).getViewport({ scale: 1 });
    expect(width).toBeCloseTo(stock.page.widthMm * MM, 1);
    expect(height).toBeCloseTo(stock.page.heightMm * MM, 1);
    await paper.loadingTask.destroy();
  });

  it('lie on the page and apart, and it is filled to its margins alone', () => {
    const page = { x: 0, y: 0, width: stock.page.widthMm * MM, height: stock.page.heightMm * MM };
    const places = placeBoxes(stock);
    for (const [i, place] of places.entries()) {
      expect(liesIn(place, page)).toBe(true);
      expect(places.slice(i + 1).some((other) => overlap(place, other))).toBe(false);
    }
    const last = places.at(-1) as PageBox;
    expect(page.width - last.x - last.width).toBeCloseTo(stock.firstMm.x * MM, 1);
    expect(page.height - last.y - last.height).toBeCloseTo(stock.firstMm.y * MM, 1);
  });

  it('hold long names whole or cut short with …, and code, kind and caution whole', async () => {
    const labels = LONG.map(aLabel);
    const pages = await readLabels(await drawn(labels, stock), stock);
    const places = placeBoxes(stock);
    for (const page of pages) expectSound(page, stock);
    for (const [i, label] of labels.entries()) {
      const page = pages[Math.floor(i / places.length)] as LabelPage;
      const place = places[i % places.length] as PageBox;
      expect(page.codes.filter((code) => liesIn(code, place)).map(({ text }) => text)).toEqual([label.path]);
      const words = wordsIn(page, place);
      for (const whole of [label.kind, label.code, label.caution ?? '']) expect(words).toContain(without(whole));
      if (!words.includes(without(label.title))) expect(words).toMatch(/…|\[U\+/);
    }
  }, 60_000);
});

describe('a sheet of labels', () => {
  const stock = LABEL_STOCK['a4-70x37'];

  it('begins after the places that are used already, and goes on on a new one', async () => {
    const labels = severalLabels(25);
    const [first, second] = await readLabels(await drawn(labels, stock, 22), stock);
    const places = placeBoxes(stock);
    expect(first?.codes).toHaveLength(2);
    expect(first?.codes.every((code) => places.slice(22).some((place) => liesIn(code, place)))).toBe(true);
    expect(second?.codes).toHaveLength(23);
  });

  it('has the same bytes when drawn again, and says when its facts are of', async () => {
    const [one, again] = await Promise.all([drawn(severalLabels(24), stock), drawn(severalLabels(24), stock)]);
    expect(one.equals(again)).toBe(true);
    const paper = await openPaper(one);
    const { info } = (await paper.getMetadata()) as unknown as { info: Readonly<Record<string, string>> };
    expect(info).toMatchObject({ CreationDate: 'D:20261126143100Z', Title: 'Labels of TARROW' });
    expect(await (await paper.getPage(1)).getStructTree()).toMatchObject({ role: 'Root' });
    await paper.loadingTask.destroy();
  });

  it('keeps two modules free around every code, within the label', async () => {
    const [page] = await readLabels(await drawn(severalLabels(24), stock), stock);
    const inset = stock.insetMm * MM;
    for (const code of page?.codes ?? []) {
      const quiet = (2 * code.width) / 24;
      const free = { ...code, x: code.x - quiet, y: code.y - quiet };
      const zone = { ...free, width: code.width + 2 * quiet, height: code.height + 2 * quiet };
      expect(placeBoxes(stock).some((place) => liesIn(zone, place, inset - 1))).toBe(true);
      expect(page?.texts.some((text) => overlap(text, zone))).toBe(false);
    }
  });
});

describe('a label that has too much on it', () => {
  it('is refused by its index before anything is drawn, not cut', () => {
    const code = 'ก'.repeat(60);
    const labels = [aLabel(), aLabel({ code, path: labelPath({ of: 'lot', code }) })];
    const draw = (): unknown =>
      drawLabels({ plantName: 'TARROW', labels, skip: 0 }, LABEL_STOCK['letter-67x25'], new Date(0));
    expect(draw).toThrow(LabelTooSmall);
    expect(draw).toThrow('Label 1 does not fit its stock.');
  });

  it('is drawn at no wrong time', () => {
    const view = { plantName: 'TARROW', labels: [aLabel()], skip: 0 };
    expect(() => drawLabels(view, LABEL_STOCK['roll-62x29'], new Date('never'))).toThrow(TypeError);
  });
});
