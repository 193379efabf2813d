import type { Steps } from './draw-in-steps.js';
import { need, type Sheet } from './sheet.js';
import type { Element } from './tags.js';

/** Something drawn below the last thing: a heading, a paragraph, a table, a drawing. */
export interface Block {
  /** Space above, points; dropped at the top of a page. */
  readonly before: number;
  /** The least height, points, that must be on the page where it begins. */
  readonly lead: number;
  /** A heading stays with the lead of what follows it. */
  readonly keepWithNext?: boolean;
  /** Draws at sheet.y, moves sheet.y, and breaks pages inside itself where it must. */
  readonly draw: (sheet: Sheet, parent: Element) => void;
}

/** Draws blocks one below the other, a step each; a heading is never left alone at the foot of a page. */
export function* flow(sheet: Sheet, parent: Element, blocks: Iterable<Block>): Steps {
  let waiting: Block[] = [];
  for (const block of blocks) {
    waiting.push(block);
    if (block.keepWithNext === true) continue;
    place(sheet, parent, waiting);
    waiting = [];
    yield;
  }
  place(sheet, parent, waiting);
}

const place = (sheet: Sheet, parent: Element, blocks: readonly Block[]): void => {
  need(
    sheet,
    blocks.reduce((sum, { before, lead }) => sum + before + lead, 0),
  );
  for (const block of blocks) {
    if (sheet.y > sheet.top) sheet.y += block.before;
    block.draw(sheet, parent);
  }
};
