import { Injectable } from '@nestjs/common';
import type { FreezeChart as Request } from '@hull-record/contracts';
import { FEWEST_POINTS, type ProcessFigures } from '@hull-record/statistics';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { InvalidRequest, Unprocessable } from '../platform/refusals.js';
import { chartOf } from './chart-of.js';
import { chartOfHulls, ownFigures, type Worked } from './chart-of-hulls.js';
import { ChartLimitsEntity } from './chart-limits.entity.js';
import { figuresToSi } from './list-frozen.js';
import { loadHulls, valuesIn } from './load-hulls.js';
import { chartedOf } from './charted-of.js';
import { unitOf } from './unit-of.js';

export interface FrozenNow {
  readonly hulls: number;
  readonly warnings: readonly string[];
  readonly unit: string;
  readonly figures: ProcessFigures;
}

/** Quality freezes the limits of a chart from the hulls of a period. Few hulls, or restless ones, are said, not refused. */
@Injectable()
export class FreezeChart {
  constructor(private readonly record: RecordFact) {}

  run(name: string, request: Request): Promise<Receipt<FrozenNow>> {
    const what = chartedOf(name);
    const { from, to, settings, reason } = request;
    if (to < from) throw new InvalidRequest([{ pointer: '/to', detail: 'must not be before from' }]);
    return this.record.run('chart limits frozen', { ...request, what }, async (fact) => {
      const of = await chartOf(fact.tx, fact.author.plantId, { ...request, what });
      const { hulls, leftOut } = await loadHulls(fact.tx, of, { from, to });
      const unit = unitOf(what, hulls);
      const figures = ownFigures(valuesIn(hulls, unit));
      if (typeof figures === 'string') throw noLimits(figures, hulls.length);
      const worked = chartOfHulls({ hulls, unit, settings, frozen: null });
      await fact.insert(ChartLimitsEntity, {
        ...of,
        ...{ fromDay: from, toDay: to, hulls: hulls.length, settings, figures: figuresToSi(figures, unit), reason },
      });
      return { hulls: hulls.length, warnings: warningsOf(hulls.length, leftOut, worked), unit, figures };
    });
  }
}

const noLimits = (why: 'too few hulls' | 'no spread', hulls: number): Unprocessable =>
  new Unprocessable(
    'no-limits',
    why === 'no spread'
      ? 'All hulls of this period have the same mean: there is no spread to draw limits by. Choose another period.'
      : `${hulls} hulls were read in this period: limits need two at least, and are relied on from ${FEWEST_POINTS}. Choose a longer one.`,
    '/from',
  );

const warningsOf = (hulls: number, leftOut: number, { points, following }: Worked): string[] => {
  const restless = points.filter(({ fired, rangeOut, spreadOut }) => fired.length > 0 || rangeOut || spreadOut).length;
  return [
    ...(hulls < FEWEST_POINTS
      ? [`Limits from ${hulls} hulls: fewer than ${FEWEST_POINTS} are not to be relied on.`]
      : []),
    ...(restless > 0
      ? [`${restless} hulls of this period break a rule themselves: limits that hold a bad stretch are too wide.`]
      : []),
    ...(following?.correlated
      ? ['Hulls of this period are like the ones before them: limits from moving ranges do not fit that.']
      : []),
    ...(leftOut > 0 ? [`The newest ${hulls} hulls of the period count; ${leftOut} older ones are left out.`] : []),
  ];
};
