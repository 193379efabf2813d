import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import type { Box } from './geometry.js';
import { INK, STROKE } from './ink.js';
import { drawLines, heightOf, setLines, type Paragraph, type SetLine } from './paragraph.js';
import { CONTENT_WIDTH, MARGIN, startPage, type Sheet } from './sheet.js';
import { artifact, mark, open, type Element } from './tags.js';
import { STYLES, type StyleName } from './type-styles.js';

/** What a heading needs beside its text. */
export interface HeadingOptions {
  readonly level: 1 | 2 | 3 | 4;
  readonly style: StyleName;
  readonly before: number;
  /** Called where the heading is drawn, to set a bookmark. */
  readonly onDraw?: (sheet: Sheet) => void;
}

/** A heading; it stays with what follows. */
export const heading = (fonts: Fonts, text: string, options: HeadingOptions): Block => {
  const lines = setLines(fonts, [{ text, style: options.style }], CONTENT_WIDTH);
  return {
    before: options.before,
    lead: heightOf(lines) + 3,
    keepWithNext: true,
    draw: (sheet, parent) => {
      options.onDraw?.(sheet);
      drawTagged(sheet, parent, `H${options.level}`, lines);
      sheet.y += 3;
    },
  };
};

/** Paragraphs under each other; they break between lines, and never with a single line before the break. */
export const text = (fonts: Fonts, paragraphs: readonly Paragraph[], before = 4, keepWithNext = false): Block => {
  const set = paragraphs.map((paragraph) => setLines(fonts, [paragraph], CONTENT_WIDTH));
  return {
    before,
    lead: heightOf(keepWithNext ? set.flat().slice(0, 6) : (set[0] ?? []).slice(0, 2)),
    keepWithNext,
    draw: (sheet, parent) => {
      for (const lines of set) drawTagged(sheet, parent, 'P', lines);
    },
  };
};

/** Lines of one element, over as many pages as they need. */
const drawTagged = (sheet: Sheet, parent: Element, type: string, lines: readonly SetLine[]): void => {
  const element = open(sheet.doc, parent, type);
  let rest = lines;
  while (rest.length > 0) {
    const here = rest.slice(0, fitting(rest, sheet.bottom - sheet.y));
    if (here.length === 0) {
      startPage(sheet);
      continue;
    }
    mark(sheet.doc, element, type, () =>
      drawLines(sheet.doc, sheet.fonts, here, { x: MARGIN, y: sheet.y, width: CONTENT_WIDTH }),
    );
    sheet.y += heightOf(here);
    rest = rest.slice(here.length);
  }
  element.end();
};

/** How many of the lines go into a height in points. */
export const fitting = (lines: readonly SetLine[], height: number): number => {
  let used = 0;
  const over = lines.findIndex(({ style }) => (used += STYLES[style].leading) > height + 0.01);
  return over < 0 ? lines.length : over;
};

const STAMP_PAD = 5;

/** A framed statement: double line when it is signed or settled, dashed when it is not. */
export const stamp = (fonts: Fonts, paragraphs: readonly Paragraph[], settled: boolean): Block => {
  const lines = setLines(fonts, paragraphs, CONTENT_WIDTH - 4 * STAMP_PAD);
  const width = Math.min(CONTENT_WIDTH, Math.max(...lines.map((line) => line.width)) + 4 * STAMP_PAD);
  const height = heightOf(lines) + 2 * STAMP_PAD + 2;
  return {
    before: 6,
    lead: height,
    draw: (sheet, parent) => {
      const { doc, y } = sheet;
      artifact(doc, 'Layout', () => frame(doc, { x: MARGIN, y, width, height }, settled));
      const element = open(doc, parent, 'P');
      mark(doc, element, 'P', () =>
        drawLines(doc, fonts, lines, { x: MARGIN + 2 * STAMP_PAD, y: y + STAMP_PAD + 1, width }),
      );
      element.end();
      sheet.y += height;
    },
  };
};

const frame = (doc: PDFKit.PDFDocument, { x, y, width, height }: Box, settled: boolean): void => {
  doc.save().lineWidth(STROKE.line);
  if (settled) {
    doc.rect(x + 2, y + 2, width - 4, height - 4).stroke(INK.ink);
    doc.lineWidth(STROKE.hair).rect(x, y, width, height).stroke(INK.ink);
  } else {
    doc.dash(3, { space: 2 }).rect(x, y, width, height).stroke(INK.ink);
  }
  doc.restore();
};
