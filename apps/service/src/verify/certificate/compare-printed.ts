import type { CertificateContent } from '@hull-record/contracts';
import { askAt, CERTIFICATE_WORDS as WORDS, certificateWords } from '@hull-record/paper';
import { solid } from './read-certificate.js';

/** Where to ask and the code to ask by: they are of no content, and say nothing of the hull. */
const WHERE = /^https?:\/\/[^\s]+\/c[0-9A-Za-z-]{26,40}$/;
/** So much of what differs is told, characters. */
const TOLD = 40;

/**
 * Compares the page of a certificate with what is embedded, both ways: every value that has to be printed is, and
 * nothing else is printed than these values and the words that are the same on each certificate, in their order.
 *
 * @param printed all texts of the page without spaces
 * @returns a sentence that says what differs; null when nothing does
 */
export const comparePrinted = (content: CertificateContent, printed: string): string | null => {
  const missing = textsOf(content).find((text) => !printed.includes(solid(text)));
  if (missing !== undefined) return `The page does not print what is embedded: ${missing}.`;
  const words = solid([...certificateWords(content), WORDS.question, askAt(content)].join(''));
  const end = solid(`${WORDS.answer}${WORDS.proof}`);
  const same = sameAtFirst(words, printed);
  if (same < words.length) return notEmbedded(printed.slice(same));
  const rest = printed.slice(words.length);
  if (!rest.endsWith(end)) return notEmbedded(rest);
  const where = rest.slice(0, -end.length);
  return WHERE.test(where) ? null : notEmbedded(where);
};

const notEmbedded = (from: string): string =>
  `The page prints what is not embedded, or not in this place: ${from.slice(0, TOLD)}.`;

/** How many characters two texts have in common from their beginning. */
const sameAtFirst = (one: string, other: string): number => {
  let at = 0;
  while (at < one.length && one[at] === other[at]) at += 1;
  return at;
};

/** Every text that the page has to print. */
const textsOf = (content: CertificateContent): readonly string[] => {
  const { format: _format, signedBy: _signer, ...printed } = content;
  return leaves(printed);
};

const leaves = (value: unknown): readonly string[] => {
  if (value === null || value === '') return [];
  if (typeof value === 'string' || typeof value === 'number') return [String(value)];
  return Object.values(value as object).flatMap(leaves);
};
