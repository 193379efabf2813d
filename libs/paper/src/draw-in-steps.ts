import type { Readable } from 'node:stream';

/** A drawing that can be interrupted between its steps. */
export type Steps = Generator<void, void>;

/** So many bytes may wait for who reads them; a paper that has fewer is drawn at once. */
const MAY_WAIT = 1024 * 1024;
/** So many steps are drawn in one turn of the event loop, when a paper is larger. */
const STEPS_A_TURN = 20;

/**
 * Draws a document step by step and ends it; what is drawn ahead of the reader is bounded, and others have their turn.
 *
 * The bytes are the same however slowly they are read. A drawing that fails throws when that is within its first
 * megabyte, and else destroys what it is read from with the error. One that nobody reads on is left as it is.
 */
export const drawInSteps = (doc: PDFKit.PDFDocument, steps: Steps): Readable => {
  const paper = doc as unknown as Readable;
  const full = (): boolean => paper.readableLength >= MAY_WAIT;
  const ended = (count: number): boolean => {
    for (let i = 0; i < count && !full(); i += 1) {
      if (steps.next().done !== true) continue;
      doc.end();
      return true;
    }
    return false;
  };
  if (!ended(Infinity)) drawOnWhileRead(paper, full, () => ended(STEPS_A_TURN));
  return paper;
};

const drawOnWhileRead = (paper: Readable, full: () => boolean, turn: () => boolean): void => {
  let state: 'waiting' | 'drawing' | 'ended' = 'waiting';
  const draw = (): void => {
    if (paper.destroyed) return;
    try {
      if (turn()) state = 'ended';
      else if (full()) state = 'waiting';
      else setImmediate(draw);
    } catch (error) {
      paper.destroy(error instanceof Error ? error : new Error(String(error)));
    }
  };
  // The stream asks for more whenever it has been read below its own mark.
  paper._read = () => {
    if (state !== 'waiting') return;
    state = 'drawing';
    setImmediate(draw);
  };
};
