import { Injectable } from '@nestjs/common';
import type { ChartView, ReadChartQuery } from '@hull-record/contracts';
import { FEWEST_POINTS } from '@hull-record/statistics';
import { DataSource, type EntityManager } from 'typeorm';
import { personNow } from '../platform/access/call.js';
import { readAsOne } from '../platform/database/read-as-one.js';
import { chartedOf } from './charted-of.js';
import { chartOf, type ChartOf } from './chart-of.js';
import { chartOfHulls } from './chart-of-hulls.js';
import { listFrozen } from './list-frozen.js';
import { loadHulls } from './load-hulls.js';
import { readChoices } from './read-choices.js';
import { USUAL } from './settings.js';
import { unitOf } from './unit-of.js';

/** A chart, judged by its frozen limits where some stand, else by figures of the hulls shown. */
@Injectable()
export class ReadChart {
  constructor(private readonly db: DataSource) {}

  run(name: string, query: ReadChartQuery): Promise<ChartView> {
    const what = chartedOf(name);
    const { plantId } = personNow();
    return readAsOne(this.db, async (tx) => this.read(tx, await chartOf(tx, plantId, { ...query, what }), query));
  }

  private async read(tx: EntityManager, of: ChartOf, query: ReadChartQuery): Promise<ChartView> {
    const { hulls, leftOut } = await loadHulls(tx, of, query);
    const unit = unitOf(of.what, hulls, query.unit);
    const history = await listFrozen(tx, of, unit);
    const frozen = history[0] ?? null;
    const settings = settingsOf(query, frozen?.settings ?? USUAL);
    const { model, part, layer, mold, gun, area } = query;
    return {
      ...{ what: of.what, unit, of: { model, part, layer, mold, gun, area } },
      ...(await readChoices(tx, of)),
      ...{ settings, frozen, history: [...history], hulls: hulls.length, leftOut, fewest: FEWEST_POINTS },
      ...chartOfHulls({ hulls, unit, settings, frozen }),
    };
  }
}

/** What the reader asks for goes before what was frozen, and that before what is usual. */
const settingsOf = (asked: ReadChartQuery, otherwise: typeof USUAL): typeof USUAL => ({
  rules: asked.rules ?? otherwise.rules,
  run: asked.run ?? otherwise.run,
  weight: asked.weight ?? otherwise.weight,
  reach: asked.reach ?? otherwise.reach,
  slack: asked.slack ?? otherwise.slack,
  limit: asked.limit ?? otherwise.limit,
});
