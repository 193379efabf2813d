import type { EntityManager } from 'typeorm';
import type { Recomputing } from '@hull-record/contracts';
import { standing } from '../../../platform/facts/standing.js';
import { findHold, type FoundHold } from '../../../platform/holds/find-hold.js';
import { loadHeldHulls, type HeldHulls } from '../../../platform/holds/load-held-hulls.js';
import { recomputingHold } from '../../../platform/holds/recomputing-hold.js';
import { wordThing } from '../../../platform/holds/word-thing.js';
import { newestOf, versions } from '../../../platform/papers/newest-of.sql.js';
import type { PlantRow } from '../../../platform/papers/plant-of.js';

/** A change of how far a hold reaches. */
export interface ScopeRow {
  readonly min_share: number;
  readonly zone: string | null;
  readonly made_from: Date | null;
  readonly made_until: Date | null;
  readonly reason: string | null;
  readonly happened_at: Date;
}

/** Everything that the list of held hulls words. */
export interface HeldPaper {
  readonly hold: FoundHold;
  readonly held: HeldHulls;
  readonly thing: string;
  readonly scopes: readonly ScopeRow[];
  readonly ended: { readonly closed: boolean; readonly reason: string; readonly happened_at: Date } | null;
  readonly plant: PlantRow;
  readonly newest: Date;
  readonly recomputing: Recomputing | null;
}

const SCOPES = `select s.* from fact.hold_scope s where s.hold_id = $1 and ${standing('s')} order by s.turn`;
const END = `select o.closed, o.reason, o.happened_at from fact.hold_lift o where o.hold_id = $1 and ${standing('o')} order by o.turn desc limit 1`;

/** What the list rests on: the hold, what was said, where the hulls are, and what of the held thing is in them. */
const NEWEST = newestOf([
  versions('hold', 'x.root = $1'),
  ...['hold_scope', 'hold_reached', 'hold_disposition', 'hold_lift'].map((table) => versions(table, 'x.hold_id = $1')),
  versions('life_fact', 'x.hull_id = any($2)'),
  versions('hull_number', 'x.hull_id = any($2)'),
  versions('joint', 'x.hull_id = any($2)'),
  versions('part', 'x.id in (select j.part_id from fact.joint j where j.hull_id = any($2))'),
  ...['layer_record', 'repair', 'touch_up', 'joint'].map((table) =>
    versions(table, 'x.part_id in (select j.part_id from fact.joint j where j.hull_id = any($2))'),
  ),
  versions(
    'used',
    `x.into_id in (${['layer_record', 'repair', 'touch_up', 'joint']
      .map(
        (table) =>
          `select p.root from fact.${table} p join fact.joint j on j.part_id = p.part_id where j.hull_id = any($2)`,
      )
      .join(' union ')})`,
  ),
  versions('lot_input', 'x.input_id = $3 or x.lot_id = $3'),
]);

/**
 * Loads a hold with its hulls for paper.
 *
 * @param tx one transaction that sees one moment
 * @throws NotThere
 */
export const loadHeldPaper = async (tx: EntityManager, name: string): Promise<HeldPaper> => {
  const hold = await findHold(tx, name);
  const held = await loadHeldHulls(tx, hold);
  const hulls = held.rows.flatMap(({ hullId }) => (hullId === null ? [] : [hullId]));
  const [plant] = await tx.query<[PlantRow]>('select p.code as plant, p.time_zone from fact.plant p where p.id = $1', [
    hold.plantId,
  ]);
  const [{ at }] = await tx.query<[{ at: Date }]>(NEWEST, [hold.id, hulls, hold.lotId]);
  const [ended] = await tx.query<NonNullable<HeldPaper['ended']>[]>(END, [hold.id]);
  return {
    ...{ hold, held, plant, newest: at, ended: ended ?? null },
    thing: await wordThing(tx, hold.id),
    scopes: await tx.query<ScopeRow[]>(SCOPES, [hold.id]),
    recomputing: await recomputingHold(tx, hold),
  };
};
