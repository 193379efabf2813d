import fc from 'fast-check';
import { describe, expect, it } from '@jest/globals';
import { placeRuns, runsOf, type Run } from '../../../libs/paper/src/runs.js';
import { toUnits } from '../../../libs/paper/src/text-safe.js';

/** As UAX #9 writes its examples: capitals stand for letters that run from right to left. */
const asHebrew = (text: string): string =>
  text.replace(/[A-Z]/g, (capital) => String.fromCodePoint(0x05d0 + capital.charCodeAt(0) - 65));
const asCapitals = (text: string): string =>
  text.replace(/[\u05d0-\u05e9]/gu, (letter) => String.fromCharCode(letter.charCodeAt(0) - 0x05d0 + 65));

const latin = (code: number): boolean => code < 0x250;
const hebrew = (code: number): boolean => code >= 0x0590 && code < 0x0600;
const fonts = { fontOf: ({ font }: { font: number }) => font, isRightToLeft: (font: number) => font === 1 };
const MIRROR = new Map(['()', ')(', '[]', ']['].map(([from = '', to = '']) => [from, to]));

/** One wide each; a run of a font from right to left is turned round by its reader. */
const shown = ({ text, font, mirrored }: Readonly<Run>): string => {
  if (mirrored) return MIRROR.get(text) ?? '?';
  return font === 1 ? Array.from(text).reverse().join('') : text;
};

/** What stands on a line from left to right. */
const seen = (text: string): string => {
  const runs = runsOf(toUnits(asHebrew(text), [latin, hebrew]), fonts);
  const places = placeRuns(
    runs,
    runs.map((run) => run.text.length),
  );
  const order = runs.map((_, i) => i).sort((a, b) => (places[a] ?? 0) - (places[b] ?? 0));
  return asCapitals(order.map((i) => shown(runs[i] as Run)).join(''));
};

describe('the order of mixed writing on a line', () => {
  it.each([
    ['UAX #9, L2, example 1: a word from right to left', 'car means CAR.', 'car means RAC.'],
    ['a paragraph that begins at the right ends at the left', 'CAR MEANS car.', '.car SNAEM RAC'],
    ['figures inside writing from right to left', 'SAMPLE 12 OF 40', '40 FO 12 ELPMAS'],
    ['brackets face the other way', 'NOTE (WHITE) [3]', '[3] (ETIHW) ETON'],
    ['a date stays whole', 'DUE 2026-07-19', '2026-07-19 EUD'],
    ['a code stays whole', 'LOT ve-2231/8 OF DRUM', 'MURD FO ve-2231/8 TOL'],
    ['a figure stays before its unit', 'THICK 18 mil', '18 mil KCIHT'],
    ['a minus stays before its figure', 'TEMP -5 °c', '-5 °c PMET'],
    ['a sentence of ours about such a name', 'Layer NAME, 18 kg (weighed)', 'Layer EMAN, 18 kg (weighed)'],
    ['a sentence of ours that begins with such a name', 'NAME: not signed', 'EMAN: not signed'],
    ['its figures go with the name', 'SAMPLE 12 OF 40: not signed yet', '40 FO 12 ELPMAS: not signed yet'],
  ])('%s', (_name, text, expected) => {
    expect(seen(text)).toBe(expected);
  });

  it('is that of each paragraph for itself', () => {
    const units = toUnits('a \u05d0.\n\u05d0.', [latin, hebrew]);
    expect(units.map(({ level = 0 }) => level)).toEqual([0, 0, 1, 0, 0, 1, 1]);
  });

  it('turns stretches round as UAX #9 does in its example 4 of rule L2', () => {
    const text = 'DID YOU SAY \'he said "car MEANS CAR"\'?';
    const levels = '11111111111112222222224443333333333211'.split('').map(Number);
    const runs = Array.from(text, (character, i) => run(character, levels[i] ?? 0));
    const places = placeRuns(
      runs,
      runs.map(() => 1),
    );
    const line: string[] = [];
    places.forEach((place, i) => (line[place] = text[i] ?? ''));
    expect(line.join('')).toBe('?\'he said "RAC SNAEM car"\' YAS UOY DID');
  });

  it('puts every run somewhere, without gaps', () => {
    const some = fc.array(fc.tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 1, max: 9 })), { maxLength: 30 });
    fc.assert(
      fc.property(some, (pairs) => {
        const runs = pairs.map(([level]) => run('x', level));
        const widths = pairs.map(([, width]) => width);
        const ends = placeRuns(runs, widths).map((place, i) => [place, place + (widths[i] ?? 0)] as const);
        ends.sort(([a], [b]) => a - b);
        expect(ends.every(([from], i) => from === (ends[i - 1]?.[1] ?? 0))).toBe(true);
      }),
    );
  });
});

describe('marks of the writing direction', () => {
  const marks = (text: string): readonly string[] =>
    runsOf(toUnits(text, [latin, hebrew]), fonts).flatMap((each) => [each.marksBefore, each.text, each.marksBehind]);

  it('are obeyed in writing from right to left, and kept where they stood', () => {
    expect(marks('\u200fאב 40\u200e').join('')).toBe('\u200fאב 40\u200e');
    expect(marks('אב \u200f').join('')).toBe('אב\u200f ');
    expect(toUnits('\u200fאב', [latin, hebrew]).map(({ text }) => text)).toEqual(['א', 'ב']);
  });

  it('keep letters apart that would be joined', () => {
    expect(marks('א\u200cב').filter((each) => each !== '')).toEqual(['א', '\u200c', 'ב']);
  });

  it('print as code points where nothing runs from right to left: two codes must not look alike', () => {
    expect(marks('VE\u200e-1').join('')).toBe('VE[U+200E]-1');
  });

  it('never let an override turn figures round', () => {
    expect(seen('SAMPLE \u202e12')).toBe('12[U+202E] ELPMAS');
  });
});

const run = (text: string, level: number): Run => ({
  ...{ text, level, font: 0, mirrored: false },
  ...{ marksBefore: '', marksBehind: '' },
});
