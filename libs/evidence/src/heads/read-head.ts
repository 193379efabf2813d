import { Malformed } from '../exact-shape.js';
import { NotCanonical, readCanonicalJson } from '../read-canonical-json.js';
import { asSignedHead, type SignedTreeHead } from './tree-head.js';

/**
 * The signed head of a line, as `headLine` writes it; one line ending after it is let pass, for mail adds it.
 *
 * What was read has the form of a head, no more: `checkHead` tells whether it holds.
 *
 * @throws Malformed for any other text
 */
export const readHead = (line: string | Uint8Array): SignedTreeHead => asSignedHead(readLine(line));

/** The value of one line of canonical JSON, with or without a line ending. @throws Malformed */
export const readLine = (line: string | Uint8Array): unknown => {
  try {
    return readCanonicalJson(typeof line === 'string' ? line.replace(ENDING, '') : withoutEnding(line));
  } catch (error) {
    if (error instanceof NotCanonical) throw new Malformed('', error.message, { cause: error });
    throw error;
  }
};

const ENDING = /\r?\n$/;
const [CR, LF] = [0x0d, 0x0a];

const withoutEnding = (line: Uint8Array): Uint8Array => {
  if (line.at(-1) !== LF) return line;
  return line.subarray(0, line.at(-2) === CR ? -2 : -1);
};
