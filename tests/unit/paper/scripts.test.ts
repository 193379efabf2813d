import { describe, expect, it, jest } from '@jest/globals';
import PDFDocument from 'pdfkit';
import { drawEquipmentRecall, drawHoldPoints } from '@hull-record/paper';
import { openFonts } from '../../../libs/paper/src/fonts.js';
import { aDefect } from '../../support/paper-views.js';
import { aRecall } from '../../support/papers/equipment-recall-view.js';
import { actualTexts, fontsIn, shownGlyphs, unpackedStreams } from '../../support/papers/glyphs.js';
import { aHoldPoint, aHoldPointSheet, PART } from '../../support/papers/hold-points-view.js';
import { piecesOfInk } from '../../support/papers/ink.js';
import { pageFaults } from '../../support/papers/page-faults.js';
import { drawn, type Drawn } from '../../support/papers/paper.js';
import { asRead, AS_CODE_POINTS, UNPRINTED, WRITINGS } from '../../support/papers/scripts.js';
import type { PrintedText } from '../../support/read-pdf.js';

/** A short paper with a text of our choice in it. */
const write = (description: string): Promise<Drawn> =>
  drawn((created) => drawEquipmentRecall(aRecall({ description, checks: [], windows: [] }), created));

const placed = ({ pages }: Drawn, text: string): PrintedText => {
  const found = pages.flat().find((each) => each.text === text);
  if (found === undefined) throw new Error(`${text} is not on the pages.`);
  return found;
};

const A4_HEIGHT = 841.89;

describe.each(WRITINGS)('%s', (_script, text) => {
  it('is read back in the order in which it was written, every glyph is there, and nothing lies over another', async () => {
    const paper = await write(text);
    expect(paper.text).toContain(asRead(text));
    expect(paper.text).not.toContain('[U+');
    expect((await shownGlyphs(paper.bytes)).filter(({ glyph }) => glyph === 0)).toEqual([]);
    expect(pageFaults(paper)).toEqual([]);
  });
});

describe('writing from right to left', () => {
  it('runs from right to left, word by word and letter by letter', async () => {
    const paper = await write('محمد ورقة 12');
    const [first, second, figure] = ['محمد', 'ورقة', '12'].map((word) => placed(paper, word).x) as [
      number,
      number,
      number,
    ];
    expect(first).toBeGreaterThan(second);
    expect(second).toBeGreaterThan(figure);
    const glyphs = (await shownGlyphs(paper.bytes)).map(({ text }) => text).join('');
    expect(glyphs).toContain('دمحم');
  });

  it.each([
    ['joins the letters of Arabic', 'محمد', 1],
    ['joins them in the forms that their places ask for: one that is not joined behind leaves a gap', 'دمحم', 2],
    ['leaves apart what is written apart', 'م\u200cح\u200cم\u200cد', 4],
    ['does not join Hebrew', 'שלום', 4],
  ])('%s', async (_name, word, pieces) => {
    const paper = await write(word);
    const items = paper.pages.flat().filter(({ text }) => /[\u0590-\u06ff]/u.test(text));
    const left = Math.min(...items.map(({ x }) => x));
    const right = Math.max(...items.map(({ x, width }) => x + width));
    const { y, size } = items[0] as PrintedText;
    const box = { x: left - 1, y: A4_HEIGHT - y - size, width: right - left + 2, height: 1.5 * size };
    expect(await piecesOfInk(paper.bytes, box)).toBe(pieces);
  });

  it('ends evenly at the right where it takes several lines', async () => {
    const paper = await write('ורקה 12 של '.repeat(40));
    const lines = new Map<number, number>();
    for (const { text, x, width, y } of paper.pages.flat()) {
      if (/[\u05d0-\u05ea]|^12$/u.test(text)) lines.set(y, Math.max(lines.get(y) ?? 0, x + width));
    }
    expect(lines.size).toBeGreaterThan(3);
    const ends = [...lines.values()];
    expect(Math.max(...ends) - Math.min(...ends)).toBeLessThan(0.1);
  });

  it('draws brackets facing the other way, through a mirror', async () => {
    const mirrors = async (text: string): Promise<number> =>
      unpackedStreams((await write(text)).bytes)
        .join('')
        .match(/^-1 0 0 1 \S+ 0 cm$/gm)?.length ?? 0;
    expect(await mirrors('לוח (גליל)')).toBe(2);
    expect(await mirrors('sheet (roll)')).toBe(0);
  });

  it('keeps its marks in the tags, which have no glyph', async () => {
    const { bytes } = await write('\u200fالعينة 12 من 40\u200e، می\u200cخواهم');
    expect(actualTexts(bytes)).toEqual(['\u200f', '\u200e', '\u200c']);
  });
});

describe('writing without spaces', () => {
  it('breaks anywhere but before a closing sign', async () => {
    const paper = await write(`${'x'.repeat(90)}${'船体记录。'.repeat(22)}`);
    const begins = paper.pages.flat().filter(({ text }) => /[\u3000-\u9fff]/u.test(text));
    expect(begins.length).toBeGreaterThan(1);
    for (const { text } of begins.slice(1)) expect(text).not.toMatch(/^。/);
    expect(begins[0]?.text.length).toBeGreaterThan(5);
    expect(pageFaults(paper)).toEqual([]);
  });
});

describe('names of 200 characters in any script', () => {
  it.each(['船体', 'ورقة', 'ورقة ', 'גליל', '船 גליל 12 ', '한국', 'Смола', 'Ñandú 船'])('%s', async (syllable) => {
    const name = Array.from(syllable.repeat(200)).slice(0, 200).join('').trimEnd();
    const view = aHoldPointSheet({
      ...{ plantName: name, part: { ...PART, number: name, model: name } },
      ...{ holdPoints: [aHoldPoint({ name })], defects: [aDefect({ mark: 'D1', note: name })] },
    });
    const paper = await drawn((created) => drawHoldPoints(view, created));
    expect(pageFaults(paper)).toEqual([]);
    expect(paper.text).toContain(asRead(name));
  });
});

describe('what no font has', () => {
  it('prints as its code point, also between letters from right to left', async () => {
    expect((await write(UNPRINTED)).text).toContain(AS_CODE_POINTS);
    expect(pageFaults(await write('🚤'.repeat(200)))).toEqual([]);
    expect((await write('לוח 🚤 לוח')).text).toContain('לוח[U+1F6A4]לוח');
  });
});

describe('a line of several scripts', () => {
  it('has one base line', async () => {
    const words = ['船体', 'ורקה', 'ورقة', '한국', 'Смола', 'Ρητίνη'];
    for (const word of words) {
      const paper = await write(`hull ${word}`);
      expect(placed(paper, word).y).toBeCloseTo(
        paper.pages.flat().find(({ text }) => text.startsWith('hull'))?.y ?? 0,
        3,
      );
    }
  });
});

describe('the fonts of a paper', () => {
  it('are those that its text needs', async () => {
    const plain = fontsIn((await write('Mil gauge')).bytes);
    expect(plain.every((name) => name.startsWith('Atkinson') || name.startsWith('HullRecord'))).toBe(true);
    const [chinese, arabic] = await Promise.all(['船', 'ورقة'].map(async (text) => fontsIn((await write(text)).bytes)));
    expect(chinese?.filter((name) => !plain.includes(name))).toEqual(['NotoSansHans-Regular']);
    expect(arabic?.filter((name) => !plain.includes(name))).toEqual(['Vazirmatn-Regular']);
  });

  it('set a mu in that of Greek words, and a micro sign alone in that of the signs', async () => {
    expect(fontsIn((await write('μέτρο')).bytes)).not.toContain('HullRecordSigns-Regular');
    expect(fontsIn((await write('16 μm')).bytes)).toContain('HullRecordSigns-Regular');
  });

  it('are read when a text first asks for them', () => {
    const doc = new PDFDocument({ autoFirstPage: false });
    const registered = jest.spyOn(doc, 'registerFont');
    const fonts = openFonts(doc);
    registered.mockClear();
    fonts.units('Mil gauge, 18 µm ≥ Łódź', 'text');
    expect(registered).not.toHaveBeenCalled();
    fonts.units('船 ورقة', 'mono-bold');
    expect(registered.mock.calls.map(([name]) => name)).toEqual(['noto-sans-hans bold', 'vazirmatn arabic bold']);
  });

  it('give the same bytes again', async () => {
    const all = WRITINGS.map(([, text]) => text).join('\n');
    const [once, again] = [await write(all), await write(all)];
    expect(once.bytes.equals(again.bytes)).toBe(true);
  });
});
