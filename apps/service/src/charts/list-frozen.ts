import type { ChartSettings, FrozenLimits } from '@hull-record/contracts';
import type { ProcessFigures } from '@hull-record/statistics';
import { fromSi, toSi, type UnitCode } from '@hull-record/trade';
import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { parametersOf, type ChartOf } from './chart-of.js';
import { spreadIn, spreadToSi } from './load-hulls.js';

const FROZEN = `
  select c.id, c.from_day::text as from, c.to_day::text as to, c.hulls, c.settings, c.figures, c.reason, p.badge as by,
    c.happened_at as "happenedAt"
  from fact.chart_limits c join fact.journal e on e.id = c.entry_id join fact.person p on p.id = e.person_id
  where c.model_id = $1 and c.part_kind = $2 and c.layer is not distinct from $3 and c.mold_id is not distinct from $4
    and c.gun_id is not distinct from $5 and c.area is not distinct from $6 and c.what = $7 and ${standing('c')}
  order by c.happened_at desc, c.recorded_at desc, c.id desc`;

interface Row extends Omit<FrozenLimits, 'happenedAt'> {
  readonly settings: ChartSettings;
  readonly figures: ProcessFigures;
  readonly happenedAt: Date;
}

/** Every freezing of a chart that stands, the newest first, in a unit. */
export const listFrozen = async (tx: EntityManager, of: ChartOf, unit: UnitCode): Promise<readonly FrozenLimits[]> => {
  const rows = await tx.query<Row[]>(FROZEN, [...parametersOf(of), of.what]);
  return rows.map((row) => ({
    ...row,
    figures: figuresIn(row.figures, unit),
    happenedAt: row.happenedAt.toISOString(),
  }));
};

/** Figures that were kept in SI, in a unit. */
const figuresIn = ({ centre, sigma, within }: ProcessFigures, unit: UnitCode): ProcessFigures => ({
  centre: fromSi(centre, unit),
  sigma: spreadIn(sigma, unit),
  within: within === null ? null : spreadIn(within, unit),
});

/** Figures in a unit, to be kept in SI. */
export const figuresToSi = ({ centre, sigma, within }: ProcessFigures, unit: UnitCode): ProcessFigures => ({
  centre: toSi(centre, unit),
  sigma: spreadToSi(sigma, unit),
  within: within === null ? null : spreadToSi(within, unit),
});
