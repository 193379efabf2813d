import type { OtherExposure } from '@hull-record/contracts';
import type { Ratio, SuspectRow } from '@hull-record/statistics';
import { figure } from './judged-arrays.js';

const ratioOf = ({ ratio, lower, upper }: Ratio): OtherExposure['ratio'] => ({
  ...{ ratio: figure(ratio), lower: figure(lower), upper: figure(upper) },
});

/** The figures of a class that every table shows. */
export const rowFigures = (row: SuspectRow, named: string): Omit<OtherExposure, 'family'> => {
  const { a, b, c, d } = row.crude.table;
  return {
    ...{ named, hulls: row.suspect.hulls.length, observed: row.observed, expected: row.expected },
    ...{ ratio: ratioOf(row.ratio), hazardOdds: ratioOf(row.hazardOdds), p: row.p, q: row.q },
    crude: {
      table: { exposedWithClaim: a, exposedWithout: b, othersWithClaim: c, othersWithout: d },
      p: row.crude.p,
    },
    ...{ mixedWithAge: row.mixedWithAge, hullYears: row.watched / 365.25 },
  };
};
