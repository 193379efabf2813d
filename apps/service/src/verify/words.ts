import type { Verified } from './verify-database.js';

/** What a look over the whole database proves, and what it does not, in sentences. */
export const wordsOf = ({ faults, plants, heldHeads, erased }: Verified): readonly string[] => [
  ...plants.map(
    ({ plant, sealed, unsealed }) => `Plant ${plant}: ${sealed} entries sealed, ${unsealed} entries not sealed yet.`,
  ),
  ...(faults.length === 0 ? proven(heldHeads) : found(faults.map(({ words }) => words))),
  erasedWords(erased),
  'Not protected: entries not sealed yet; what can be worked out anew (schema derived); sessions, jobs and devices (schema work); the transaction that an entry was recorded in.',
];

const erasedWords = ({ owners, texts, files }: Verified['erased']): string =>
  `Erased by recorded acts: personal data of ${owners} owners, ${texts} texts${
    files === null ? '; stored files were not looked at' : `, ${files} files of photos`
  }. Their commitments stay.`;

const proven = (held: Verified['heldHeads']): readonly string[] => [
  'Every row of facts is as the journal has it, the journal is as it was sealed, and every signed head fits.',
  ...(held.length === 0
    ? [
        'No head was given that somebody else holds: whoever owns the database and has the keys of the journal could have made all of it anew. Give one with --head FILE.',
      ]
    : held.map(
        ({ plant, size, at, keyId }) =>
          `Unchanged since a head that somebody else holds: the first ${size} entries of plant ${plant}, signed at ${at} by key ${keyId}.`,
      )),
];

const found = (words: readonly string[]): readonly string[] => [
  `Something was done behind the service's back. First: ${words[0] ?? ''}`,
  ...words.slice(1),
];
