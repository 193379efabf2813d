import type { PrintedText } from '../read-pdf.js';
import type { Drawn } from './paper.js';

const MARGIN = (15 * 72) / 25.4;
const [WIDTH, HEIGHT] = [595.28, 841.89];

const overlaps = (a: PrintedText, b: PrintedText): boolean =>
  a.x + 0.5 < b.x + b.width &&
  b.x + 0.5 < a.x + a.width &&
  a.y - 0.15 * a.size < b.y + 0.6 * b.size &&
  b.y - 0.15 * b.size < a.y + 0.6 * a.size;

const outside = ({ x, y, width, size }: PrintedText): boolean =>
  x < MARGIN - 0.1 ||
  x + width > WIDTH - MARGIN + 0.5 ||
  y < MARGIN - 0.1 ||
  y + 0.7 * size > HEIGHT - MARGIN ||
  size < 8;

/** The running foot begins with the line that holds the page number. */
const footOf = (page: readonly PrintedText[]): number => page.find(({ text }) => /^page \d+$/.test(text))?.y ?? 0;

/** What is wrong with the pages of a paper: text over text, over a margin or too small, a page without content. */
export const pageFaults = ({ pages }: Drawn): readonly string[] =>
  pages.flatMap((page, i) => {
    const content = page.filter(({ y }) => y < HEIGHT - MARGIN - 14 && y > footOf(page));
    const clashes = page.flatMap((a, at) =>
      page
        .slice(at + 1)
        .filter((b) => overlaps(a, b))
        .map((b) => `page ${i + 1}: "${a.text}" and "${b.text}" overlap`),
    );
    return [
      ...clashes,
      ...page.filter(outside).map(({ text }) => `page ${i + 1}: "${text}" is over a margin or too small`),
      ...(content.length === 0 ? [`page ${i + 1} is empty`] : []),
      ...(footOf(page) === 0 ? [`page ${i + 1} has no number`] : []),
    ];
  });
