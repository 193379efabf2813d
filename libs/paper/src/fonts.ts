import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { unpackWoff } from './open-type.js';
import { symbolsFont } from './symbols-font.js';
import { toUnits, type HasGlyph, type Unit } from './text-safe.js';

/** The faces of the house: words, and codes or figures. */
export type Face = 'text' | 'text-bold' | 'text-italic' | 'mono' | 'mono-bold';

/** Measures and draws text in any face of one document; every font used is embedded. */
export interface Fonts {
  readonly units: (text: string, face: Face) => readonly Unit[];
  /** Width in points. */
  readonly width: (units: readonly Unit[], face: Face, size: number) => number;
  /** Draws one line with its top at y; ascent and descent are 0.984 and 0.316 of the size in every face. */
  readonly draw: (units: readonly Unit[], face: Face, size: number, x: number, y: number) => void;
}

const require = createRequire(import.meta.url);

const FILES: Readonly<Record<Face, readonly [family: 'next' | 'mono', cut: string]>> = {
  text: ['next', '400-normal'],
  'text-bold': ['next', '700-normal'],
  'text-italic': ['next', '400-italic'],
  mono: ['mono', '400-normal'],
  'mono-bold': ['mono', '700-normal'],
};
const SUBSETS = ['latin', 'latin-ext'] as const;

/**
 * Registers Atkinson Hyperlegible Next and Mono (SIL OFL 1.1) and our signs with a document.
 *
 * Each face is a family of three fonts: Latin, Latin extended, signs. Files come from the fontsource packages.
 */
export const openFonts = (doc: PDFKit.PDFDocument): Fonts => {
  for (const face of Object.keys(FILES) as Face[]) registerFace(doc, face);
  doc.registerFont('signs', symbolsFont(false));
  doc.registerFont('signs-bold', symbolsFont(true));
  const coverage = new Map<string, HasGlyph>();
  const covers = (name: string): HasGlyph => {
    const known = coverage.get(name) ?? glyphTest(doc, name);
    coverage.set(name, known);
    return known;
  };
  return {
    units: (text, face) => toUnits(text, family(face).map(covers)),
    width: (units, face, size) =>
      runsOf(units, face).reduce((sum, run) => sum + select(doc, face, run, size).widthOfString(run.text), 0),
    draw: (units, face, size, x, y) => {
      let at = x;
      for (const run of runsOf(units, face)) {
        select(doc, face, run, size).text(run.text, at, y, { lineBreak: false });
        at += doc.widthOfString(run.text);
      }
    },
  };
};

const family = (face: Face): readonly string[] => [
  ...SUBSETS.map((subset) => `${face} ${subset}`),
  face.endsWith('bold') ? 'signs-bold' : 'signs',
];

/** Codes and figures are set in mono with the narrower space of the words, or they fall apart. */
const WORD_SPACE = 'text latin';
const WORD_SPACE_FONT = 3;

const registerFace = (doc: PDFKit.PDFDocument, face: Face): void => {
  const [kind, cut] = FILES[face];
  const name = `atkinson-hyperlegible-${kind}`;
  for (const subset of SUBSETS) {
    doc.registerFont(`${face} ${subset}`, fontFile(`@fontsource/${name}/files/${name}-${subset}-${cut}.woff`));
  }
};

/** Fonts that were unpacked, by file: they are the same for every paper. */
const unpacked = new Map<string, Buffer>();

const fontFile = (file: string): Buffer => {
  const known = unpacked.get(file) ?? unpackWoff(readFileSync(require.resolve(file)));
  unpacked.set(file, known);
  return known;
};

/** PDFKit drops a character without a glyph silently and offers no public question; its parsed font knows. */
const glyphTest = (doc: PDFKit.PDFDocument, name: string): HasGlyph => {
  doc.font(name);
  const { font } = (doc as unknown as { _font: { font: { hasGlyphForCodePoint: HasGlyph } } })._font;
  return (codePoint) => font.hasGlyphForCodePoint(codePoint);
};

const select = (doc: PDFKit.PDFDocument, face: Face, run: Readonly<Run>, size: number): PDFKit.PDFDocument =>
  doc.font(family(face)[run.font] ?? WORD_SPACE, size);

/** A text in one font of a family. */
interface Run {
  text: string;
  readonly font: number;
}

/** Neighbours of one font set as one string, so that kerning and text search work. */
const runsOf = (units: readonly Unit[], face: Face): readonly Readonly<Run>[] => {
  const runs: Run[] = [];
  for (const unit of units) {
    const last = runs.at(-1);
    const font = fontOf(unit, face, last);
    if (last?.font === font) last.text += unit.text;
    else runs.push({ text: unit.text, font });
  }
  return runs;
};

/** A space goes with whatever stands before it, which keeps words in one run: both Latin fonts have one. */
const fontOf = (unit: Unit, face: Face, last: Readonly<Run> | undefined): number => {
  if (unit.kind !== 'space' && unit.text !== '\u00a0') return unit.font;
  if (face.startsWith('mono')) return WORD_SPACE_FONT;
  return last !== undefined && last.font < SUBSETS.length ? last.font : 0;
};
