import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import type { HoldView } from '@hull-record/contracts';
import { holdFigures, HULL_STATES } from '@hull-record/trade';
import { readAsOne } from '../platform/database/read-as-one.js';
import { standing } from '../platform/facts/standing.js';
import { findHold, type FoundHold } from '../platform/holds/find-hold.js';
import { loadHeldHulls, type HeldHulls } from '../platform/holds/load-held-hulls.js';
import { recomputingHold } from '../platform/holds/recomputing-hold.js';
import { badgeOf, endOf, iso, thingOf } from './thing-of.sql.js';

const READ = `
  select h.root as id, ${iso('h.happened_at')} as "happenedAt", ${badgeOf('h')} as by, ${thingOf('h')} as on, h.kind, h.reason,
    ${endOf('h')} as ended,
    coalesce((select json_agg(json_build_object('id', s.root, 'happenedAt', ${iso('s.happened_at')}, 'by', ${badgeOf('s')},
        'minShare', s.min_share, 'zone', s.zone, 'from', ${iso('s.made_from')}, 'until', ${iso('s.made_until')}, 'reason', s.reason) order by s.turn)
      from fact.hold_scope s where s.hold_id = h.root and ${standing('s')}), '[]') as scopes
  from fact.hold h where h.root = $1 and ${standing('h')}`;

/** Zones of the schedules by which the models of these hulls are made. */
const ZONES = `
  select distinct y.zone from fact.model m join fact.schedule s on s.model_id = m.id join fact.schedule_layer y on y.schedule_id = s.id
  where m.code = any($1) order by y.zone`;

/** One hold, with how far the work has come. */
@Injectable()
export class ReadHold {
  constructor(private readonly db: DataSource) {}

  run(hold: string): Promise<HoldView> {
    return readAsOne(this.db, async (tx) => {
      const found = await findHold(tx, hold);
      const [view] = await tx.query<[Omit<HoldView, 'figures' | 'recomputing' | 'zones'>]>(READ, [found.id]);
      const held = await loadHeldHulls(tx, found);
      return {
        ...view,
        zones: await zonesOf(tx, held),
        figures: figuresOf(held),
        recomputing: await recomputingHold(tx, found as FoundHold),
      };
    });
  }
}

const zonesOf = async (tx: EntityManager, { rows }: HeldHulls): Promise<string[]> => {
  const models = [...new Set(rows.map(({ model }) => model))];
  return (await tx.query<{ zone: string }[]>(ZONES, [models])).map(({ zone }) => zone);
};

/** Counts what a hold reaches now; what it reaches no more is no part of it. */
export const figuresOf = ({ rows, below }: HeldHulls): HoldView['figures'] => {
  const reached = rows.filter((row) => row.reached);
  const states = HULL_STATES.map((state) => ({ state, hulls: reached.filter((row) => row.state === state).length }));
  return {
    ...holdFigures(reached.map(({ state, said }) => ({ state, said: said.map(({ what }) => what) }))),
    ...{ below, left: reached.filter(({ leftAt }) => leftAt !== null).length },
    atHold: rows.filter(({ atHold }) => atHold !== null).length,
    states: states.filter(({ hulls }) => hulls > 0),
  };
};
