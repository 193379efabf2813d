import { amountAtFirst, amountFields, amountOf } from '../entry/amount-fields.js';
import type { FieldGroup, Said } from '../entry/entry-field.js';
import type { Words } from '../words/words.js';

const WAYS = ['lot', 'container', 'tank'] as const;
type Way = (typeof WAYS)[number];

/** A group of fields for each of what went in, in the order in which it went in. */
export const inputFields = (words: Words, count: number): readonly FieldGroup[] => {
  const { t, term } = words;
  return Array.from({ length: count }, (_, i) => ({
    name: t('store.input', { number: i + 1 }),
    fields: [
      {
        name: `way${i}`,
        label: t('store.takenFrom'),
        kind: 'choice' as const,
        options: WAYS.map((way) => [way, term(way)] as const),
        pointer: `/inputs/${i}/way`,
      },
      { name: `from${i}`, label: t('store.takenCode'), pointer: `/inputs/${i}` },
      ...amountFields(words, { name: `input${i}`, label: t('store.takenAmount'), pointer: `/inputs/${i}/amount` }),
    ],
  }));
};

/** What stands in them at first: of a lot, in kilograms that were weighed. */
export const inputsAtFirst = (count: number): Readonly<Record<string, string>> =>
  Object.assign(
    {},
    ...Array.from({ length: count }, (_, i) => ({ [`way${i}`]: 'lot', ...amountAtFirst(`input${i}`) })),
  ) as Record<string, string>;

/** What went in, as it is sent; rows in which nothing was typed are left out. */
export const inputsOf = (said: Said, count: number) =>
  Array.from({ length: count }, (_, i) => i)
    .filter((i) => i === 0 || `${said(`from${i}`)}${said(`input${i}`)}`.trim() !== '')
    .map((i) => {
      const way = (said(`way${i}`) || 'lot') as Way;
      return { [way]: said(`from${i}`).trim(), amount: amountOf(said, `input${i}`) } as {
        readonly [W in Way]?: string;
      } & { readonly amount: ReturnType<typeof amountOf> };
    });
