import { inflateSync } from 'node:zlib';
import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { openPaper } from '../read-pdf.js';

/** A glyph as a page shows it. */
export interface ShownGlyph {
  /** Its number in the font as embedded; 0 is the box that stands for a missing one. */
  readonly glyph: number;
  /** What it is read as. */
  readonly text: string;
}

interface ReadGlyph {
  readonly originalCharCode: number;
  readonly unicode: string;
}

/** Every glyph of every page, in the order in which it is drawn. */
export const shownGlyphs = async (bytes: Buffer): Promise<readonly ShownGlyph[]> => {
  const paper = await openPaper(bytes);
  const shown: ShownGlyph[] = [];
  for (let number = 1; number <= paper.numPages; number += 1) {
    const { fnArray, argsArray } = await (await paper.getPage(number)).getOperatorList();
    fnArray.forEach((operation, i) => {
      if (operation !== OPS.showText) return;
      const [glyphs] = argsArray[i] as [readonly (ReadGlyph | number)[]];
      for (const glyph of glyphs) {
        if (typeof glyph === 'object') shown.push({ glyph: glyph.originalCharCode, text: glyph.unicode });
      }
    });
  }
  await paper.loadingTask.destroy();
  return shown;
};

/** PostScript names of the fonts that a paper embeds, without the tag of the subset. */
export const fontsIn = (bytes: Buffer): readonly string[] =>
  Array.from(bytes.toString('latin1').matchAll(/\/FontName \/[A-Z]{6}\+(\S+)/g), ([, name = '']) => name);

/** All streams of a paper that zlib packed, unpacked, as Latin-1. */
export const unpackedStreams = (bytes: Buffer): readonly string[] =>
  Array.from(bytes.toString('latin1').matchAll(/ obj\n<<([^]*?)>>\nstream\n/g)).flatMap(
    ({ 0: head, 1: about = '', index }) => {
      if (!about.includes('/FlateDecode')) return [];
      // By its length: packed bytes may end in what looks like the end of a line.
      const length = Number(/\/Length (\d+)/.exec(about)?.[1]);
      const from = index + head.length;
      return [inflateSync(bytes.subarray(from, from + length)).toString('latin1')];
    },
  );

/** What tags say was written in place of glyphs. */
export const actualTexts = (bytes: Buffer): readonly string[] =>
  unpackedStreams(bytes).flatMap((stream) =>
    Array.from(stream.matchAll(/\/ActualText \(\u00fe\u00ff((?:\\[^]|[^\\)])*)\)/g), ([, utf16 = '']) =>
      Buffer.from(unescaped(utf16), 'latin1').swap16().toString('utf16le'),
    ),
  );

const ESCAPED = new Map([...'nrtbf'].map((letter, i) => [letter, '\n\r\t\b\f'[i] ?? '']));

/** A string of a PDF without its backslashes: ISO 32000-2, 7.3.4.2. */
const unescaped = (text: string): string =>
  text.replace(/\\([^])/g, (_, character: string) => ESCAPED.get(character) ?? character);
