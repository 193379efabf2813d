import { buffer } from 'node:stream/consumers';
import type { Readable } from 'node:stream';
import type { PaperView } from '@hull-record/paper';
import { CREATED, openPaper, readPages, solid, type PrintedText } from '../read-pdf.js';

/** What the papers of the tests say of themselves. */
export const PAPER: PaperView = {
  plantName: 'Tarrow Sound Boats',
  stateAsOf: { instant: '2026-11-26T14:30:00Z', text: '26 Nov 2026 09:30 UTC−5' },
  recomputing: null,
};

/** Chinese, Arabic from right to left, and a sign that no font has. */
export const OTHER_SCRIPTS = '船体记录 مرحبا 🚤';
/** The same as it prints. */
export const AS_PRINTED = ['船体记录', 'مرحبا', '[U+1F6A4]'];
/** A name of 200 characters without a space. */
export const LONG_NAME = `${'x'.repeat(199)}!`;

/** A paper drawn and read back: its bytes, its pages, and all its text without spaces. */
export interface Drawn {
  readonly bytes: Buffer;
  readonly pages: readonly (readonly PrintedText[])[];
  readonly text: string;
}

/** Draws a paper at the moment of the tests and reads it back. */
export const drawn = async (draw: (created: Date) => Readable): Promise<Drawn> => {
  const bytes = await buffer(draw(CREATED));
  const pages = await readPages(bytes);
  return { bytes, pages, text: solid(pages) };
};

/** The first of some words that do not follow each other in a text without spaces; undefined when all do. */
export const outOfOrder = (text: string, words: readonly string[]): string | undefined => {
  let from = 0;
  return words.find((part) => {
    const at = text.indexOf(part.replace(/\s/gu, ''), from);
    from = at + 1;
    return at < 0;
  });
};

/** Titles of the bookmarks, and the kinds of elements in the structure of all pages. */
export const structureOf = async (
  bytes: Buffer,
): Promise<{ readonly bookmarks: readonly string[]; readonly roles: ReadonlySet<string> }> => {
  const paper = await openPaper(bytes);
  const outline = (await paper.getOutline()) ?? [];
  const roles = new Set<string>();
  const walk = (node: { readonly role?: string; readonly children?: readonly unknown[] }): void => {
    if (node.role !== undefined) roles.add(node.role);
    for (const child of node.children ?? []) walk(child as typeof node);
  };
  for (let number = 1; number <= paper.numPages; number += 1) {
    walk((await (await paper.getPage(number)).getStructTree()) ?? {});
  }
  await paper.loadingTask.destroy();
  return { bookmarks: outline.map(({ title }) => title), roles };
};
