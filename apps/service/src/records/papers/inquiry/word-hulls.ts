import type { Said } from '@hull-record/paper';
import type { CaseAnswer } from '@hull-record/contracts';
import { hulls, share } from './word-figures.js';

/** Hulls at risk, and every hull and claim that was left out, with the reason and how many. */
export const wordHulls = ({ hulls: counted, watchedUntil }: CaseAnswer): readonly Said[] => [
  ['At risk', `${hulls(counted.atRisk)} in ${counted.strata} strata, watched until ${watchedUntil}`],
  [
    'With a claim',
    `${hulls(counted.withClaim)} with a first claim that counts. The unit is the hull, never the blister`,
  ],
  [
    'Without origin',
    `${hulls(counted.withoutOrigin)} left out (${share(counted.shareWithoutOrigin)} of all): the day of the time origin is not on ` +
      `record, as of hulls still in the plant; ${counted.withoutOriginWithClaim} of them with a claim`,
  ],
  ['Not there yet', `${hulls(counted.notLaunched)} left out: they came to their time origin after that day`],
  [
    'Prompted',
    `${hulls(counted.prompted)} whose first claim a hold or a notice brought to light: watched until then, as without a claim`,
  ],
  ['Late', `${hulls(counted.late)} whose first claim came to light after that day: as without a claim until it`],
  [
    'Before freezing',
    `${hulls(counted.before)} left out: their claim was known, or their watching over, when the settings were frozen`,
  ],
  ...(counted.beforeOrigin === undefined
    ? []
    : [
        [
          'Older claim',
          `${hulls(counted.beforeOrigin)} left out: their first claim is older than their time origin`,
        ] as const,
      ]),
];
