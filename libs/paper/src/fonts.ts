import { FALLBACKS, fontFile, houseFile, SUBSETS, type Face } from './font-files.js';
import { placeRuns, runsOf, type Run, type RunFonts } from './runs.js';
import { symbolsFont } from './symbols-font.js';
import { toUnits, type HasGlyph } from './text-safe.js';
import type { Unit } from './unit.js';

export type { Face } from './font-files.js';

/** Measures and draws text in any face of one document; every font used is embedded. */
export interface Fonts {
  readonly units: (text: string, face: Face) => readonly Unit[];
  /** Width in points. */
  readonly width: (units: readonly Unit[], face: Face, size: number) => number;
  /** Draws one line with its top at y; ascent and descent are 0.984 and 0.316 of the size in every face. */
  readonly draw: (units: readonly Unit[], face: Face, size: number, x: number, y: number) => void;
}

const ASCENT = 0.984;

/**
 * Registers Atkinson Hyperlegible Next and Mono (SIL OFL 1.1) and our signs with a document.
 *
 * Each face is a family of three fonts, Latin, Latin extended and signs, and behind them the fallbacks, which are opened
 * by the first text that needs them. Files come from packages.
 */
export const openFonts = (doc: PDFKit.PDFDocument): Fonts => {
  for (const face of FACES) {
    for (const subset of SUBSETS) doc.registerFont(`${face} ${subset}`, fontFile(houseFile(face, subset)));
  }
  doc.registerFont('signs', symbolsFont(false));
  doc.registerFont('signs-bold', symbolsFont(true));
  const coverage = coverageOf(doc);
  const widthOf = (run: Readonly<Run>, face: Face, size: number): number =>
    select(doc, face, run, size).widthOfString(run.text);
  return {
    units: (text, face) => toUnits(text, GREEK.test(text) ? coverage(face).map(withoutMu) : coverage(face)),
    width: (units, face, size) => runsOf(units, runFonts(face)).reduce((sum, run) => sum + widthOf(run, face, size), 0),
    draw: (units, face, size, x, y) => {
      const runs = runsOf(units, runFonts(face));
      const widths = runs.map((run) => widthOf(run, face, size));
      const places = placeRuns(runs, widths);
      for (const [i, run] of runs.entries()) {
        select(doc, face, run, size);
        drawRun(doc, run, size, { x: x + (places[i] ?? 0), y, width: widths[i] ?? 0 });
      }
    },
  };
};

const FACES: readonly Face[] = ['text', 'text-bold', 'text-italic', 'mono', 'mono-bold'];
const SIGNS = SUBSETS.length;
const FIRST_FALLBACK = SIGNS + 1;

const isBold = (face: Face): boolean => face.endsWith('bold');

/** Names of the fonts of each face, as registered with a document. */
const FAMILIES: ReadonlyMap<Face, readonly string[]> = new Map(
  FACES.map((face) => [
    face,
    [
      ...SUBSETS.map((subset) => `${face} ${subset}`),
      isBold(face) ? 'signs-bold' : 'signs',
      ...FALLBACKS.map(({ name }) => (isBold(face) ? `${name} bold` : name)),
    ],
  ]),
);

const family = (face: Face): readonly string[] => FAMILIES.get(face) ?? [];

/** Greek writing other than the micro sign: there a mu is set in the font of its neighbours, not in that of the signs. */
const GREEK = /(?!\u03bc)\p{Script=Greek}/u;
const withoutMu = (has: HasGlyph, font: number): HasGlyph =>
  font === SIGNS ? (codePoint) => codePoint !== 0x3bc && has(codePoint) : has;

/** Tells of each font of a face which characters it has; asks a fallback only about its own scripts. */
const coverageOf = (doc: PDFKit.PDFDocument): ((face: Face) => readonly HasGlyph[]) => {
  const asked = new Map<string, HasGlyph>();
  const once = (name: string, open: () => HasGlyph): HasGlyph => {
    const known = asked.get(name) ?? open();
    asked.set(name, known);
    return known;
  };
  return (face) =>
    family(face).map((name, font) => {
      const fallback = FALLBACKS[font - FIRST_FALLBACK];
      if (fallback === undefined) return once(name, () => glyphTest(doc, name));
      const open = (): HasGlyph => {
        doc.registerFont(name, fontFile(fallback.file(isBold(face))));
        return glyphTest(doc, name);
      };
      return (codePoint) => fallback.scripts.test(String.fromCodePoint(codePoint)) && once(name, open)(codePoint);
    });
};

/** PDFKit drops a character without a glyph silently and offers no public question; its parsed font knows. */
const glyphTest = (doc: PDFKit.PDFDocument, name: string): HasGlyph => {
  const { font } = (doc.font(name) as unknown as WithFont)._font;
  return (codePoint) => font.hasGlyphForCodePoint(codePoint);
};

interface WithFont {
  readonly _font: { readonly ascender: number; readonly font: { readonly hasGlyphForCodePoint: HasGlyph } };
}

/** Codes and figures are set in mono with the narrower space of the words, or they fall apart. */
const WORD_SPACE = 'text latin';
const WORD_SPACE_FONT = -1;

const select = (doc: PDFKit.PDFDocument, face: Face, run: Readonly<Run>, size: number): PDFKit.PDFDocument =>
  doc.font(family(face)[run.font] ?? WORD_SPACE, size);

/** A space goes with whatever stands before it, which keeps words in one run: both Latin fonts have one. */
const runFonts = (face: Face): RunFonts => ({
  fontOf: (unit, last) => {
    if (unit.kind !== 'space' && unit.text !== '\u00a0') return unit.font;
    if (face.startsWith('mono')) return WORD_SPACE_FONT;
    return last !== undefined && last.font < SUBSETS.length ? last.font : 0;
  },
  isRightToLeft: (font) => FALLBACKS[font - FIRST_FALLBACK]?.rightToLeft === true,
});

/**
 * Draws a run in the font that is selected, on the base line of the house's own fonts.
 *
 * A mirrored one is drawn through a mirror, so that it is still read as the character that was written.
 */
const drawRun = (
  doc: PDFKit.PDFDocument,
  run: Readonly<Run>,
  size: number,
  { x, y, width }: { readonly x: number; readonly y: number; readonly width: number },
): void => {
  keepMarks(doc, run.marksBefore);
  if (run.mirrored) doc.save().transform(-1, 0, 0, 1, 2 * x + width, 0);
  const lower = run.font < FIRST_FALLBACK ? 0 : (ASCENT - ascentOf(doc)) * size;
  doc.text(run.text, x, y + lower, { lineBreak: false });
  if (run.mirrored) doc.restore();
  keepMarks(doc, run.marksBehind);
};

/**
 * Says in a tag of its own which marks without a glyph were written here.
 *
 * Not around the word: there some readers turn a word round once more that is replaced in a tag.
 */
const keepMarks = (doc: PDFKit.PDFDocument, marks: string): void => {
  if (marks !== '') doc.markContent('Span', { actual: marks }).endMarkedContent();
};

const ascentOf = (doc: PDFKit.PDFDocument): number => (doc as unknown as WithFont)._font.ascender / 1000;
