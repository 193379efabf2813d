import type { CaseClass } from '@hull-record/contracts';
import type { Words } from '../../words/words.js';

/** Where the lots of a class are: roles and kinds of layer. */
export const familyOf = ({ members }: CaseClass): string =>
  [...new Set(members.map(({ family }) => family))].join('; ');

type Ratio = CaseClass['ratio'];

/** A chance, to two digits; what is smaller than a millionth says so. */
export const chance = (p: number, { figure, t }: Words): string =>
  p < 1e-6 ? t('cases.underMillionth') : figure(p, 2);

/** A ratio with its limits; a side without a bound says so. */
export const ratioWords = ({ ratio, lower, upper }: Ratio, { figure, t }: Words): string => {
  if (ratio === null && lower !== null) return t('cases.atLeast', { lower: figure(lower) });
  const side = (value: number | null): string => (value === null ? t('cases.noBound') : figure(value));
  return t('cases.ratioWithin', { ratio: side(ratio), lower: side(lower), upper: side(upper) });
};

/** The class that the verdict is given for: the first strong one, or else the first that stands out. */
export const leaderOf = (classes: readonly CaseClass[]): CaseClass | undefined =>
  classes.find(({ strength }) => strength === 'strong') ?? classes.find(({ strength }) => strength !== 'none');
