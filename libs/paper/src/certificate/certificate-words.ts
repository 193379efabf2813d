import type { CertificateView } from './certificate-view.js';

/**
 * The words of a certificate that are the same on each. Whoever holds a certificate of this format compares its page
 * with them: other words are another format.
 */
export const WORDS = {
  title: 'Certificate of what was recorded',
  facts: ['Builder', 'Hull', 'HIN', 'Model', 'Released', 'Number and issue'],
  columns: ['Layer', 'Materials', 'Made', 'Readings, lowest to highest'],
  repaired: ['Repaired and accepted', 'No repair is recorded.'],
  concessions: ['Used as is under concession', 'No concession is recorded.'],
  question: 'Is this paper genuine and still current?',
  answer: 'The answer shows the state today. If in doubt, ask the builder.',
  proof:
    'Embedded in this file: the words above as the builder recorded them, and the proof of their place in the journal. The file is signed; a changed byte breaks the signature.',
} as const;

/** The running head of a certificate. */
export const headOf = ({ number, issue, hull }: CertificateView): string =>
  `Certificate ${number}, issue ${issue}  ·  Hull ${hull}`;

/** Values of the title block, in the order of their labels. */
export const factsOf = (view: CertificateView): readonly (string | null)[] => [
  ...[view.plant, view.hull, view.hin, view.model, view.released],
  `${view.number}, issue ${view.issue}, of ${view.issuedOn}`,
];

/** Where to ask, up to the address. */
export const askAt = ({ number }: CertificateView): string => `Scan the code, or type it with the number ${number} at`;

/** All that the page prints of what it certifies, in the order in which it is drawn, up to the block with the code. */
export const certificateWords = (view: CertificateView): readonly string[] => {
  const values = factsOf(view);
  const listed = ([title, none]: readonly [string, string], lines: readonly string[]): readonly string[] => [
    title,
    ...(lines.length === 0 ? [none] : lines),
  ];
  return [
    ...[headOf(view), view.statement, 'page 1', WORDS.title],
    ...WORDS.facts.flatMap((label, i) => (values[i] ? [label, values[i]] : [])),
    ...view.parts.flatMap(({ part, kind, layers }) => [
      ...[`${kind} ${part}, outside in`, ...WORDS.columns],
      ...layers.flatMap(({ name, materials, made, readings }) => [name, materials, made, readings]),
    ]),
    ...listed(WORDS.repaired, view.repaired),
    ...listed(WORDS.concessions, view.concessions),
    ...view.leftOut,
  ];
};
