import type { EntityManager } from 'typeorm';
import { WHOLE_SCOPE, type HoldScope } from '@hull-record/trade';
import { standing } from '../facts/standing.js';
import { findStanding } from '../lookups/find-standing.js';
import type { HeldOn } from './reach-of-hold.js';

/** A hold that stands, with its scope as it is now. */
export interface FoundHold extends HeldOn {
  readonly id: string;
  readonly kind: string;
  readonly reason: string;
  readonly happenedAt: Date;
  readonly scope: HoldScope;
  /** It was lifted or closed. */
  readonly ended: boolean;
  /** It was closed with every hull disposed of: one that comes to it later waits all the same. */
  readonly closed: boolean;
}

interface Row {
  readonly id: string;
  readonly root: string;
  readonly plant_id: string;
  readonly lot_id: string | null;
  readonly container_id: string | null;
  readonly equipment_id: string | null;
  readonly mold_id: string | null;
  readonly mold_state: number | null;
  readonly kind: string;
  readonly reason: string;
  readonly happened_at: Date;
}

interface ScopeRow {
  readonly min_share: number;
  readonly zone: string | null;
  readonly made_from: Date | null;
  readonly made_until: Date | null;
}

/** SQL of the scope of a hold that counts: the newest turn that stands. */
export const scopeOf = (hold: string): string => `
  select s.* from fact.hold_scope s where s.hold_id = ${hold} and ${standing('s')} order by s.turn desc limit 1`;

/** SQL: a hold was lifted or closed, whenever. */
export const hasEnded = (hold: string): string =>
  `exists (select from fact.hold_lift over where over.hold_id = ${hold} and ${standing('over')})`;

/** SQL: a hold was closed, not lifted. */
const wasClosed = (hold: string): string =>
  `exists (select from fact.hold_lift over where over.hold_id = ${hold} and over.closed and ${standing('over')})`;

/**
 * Finds a hold by the id of any of its versions.
 *
 * @throws NotThere
 */
export const findHold = async (tx: EntityManager, hold: string): Promise<FoundHold> => {
  const row = await findStanding<Row>(tx, 'hold', hold);
  return toHold(tx, row);
};

const toHold = async (tx: EntityManager, row: Row): Promise<FoundHold> => {
  const [scope] = await tx.query<ScopeRow[]>(scopeOf('$1'), [row.root]);
  const [{ ended, closed }] = await tx.query<[{ ended: boolean; closed: boolean }]>(
    `select ${hasEnded('$1')} as ended, ${wasClosed('$1')} as closed`,
    [row.root],
  );
  return {
    ...{ id: row.root, plantId: row.plant_id, lotId: row.lot_id, containerId: row.container_id },
    ...{ equipmentId: row.equipment_id, moldId: row.mold_id, moldState: row.mold_state },
    ...{ kind: row.kind, reason: row.reason, happenedAt: row.happened_at, ended, closed },
    scope: scope ? toScope(scope) : WHOLE_SCOPE,
  };
};

const toScope = (row: ScopeRow): HoldScope => ({
  minShare: row.min_share,
  zone: row.zone,
  from: row.made_from?.toISOString() ?? null,
  until: row.made_until?.toISOString() ?? null,
});

/** Holds in force on anything but a lot, those on lots whose scope is bounded, and those that were closed. */
const BOUNDED = `
  select h.* from fact.hold h left join lateral (${scopeOf('h.root')}) s on true
  where h.plant_id = $1 and ${standing('h')} and (not ${hasEnded('h.root')} or ${wasClosed('h.root')})
    and (h.lot_id is null or ${wasClosed('h.root')} or s.min_share > 0 or s.zone is not null or s.made_from is not null or s.made_until is not null)
    and (h.lot_id is null or h.lot_id = any($2::uuid[]))
  order by h.happened_at, h.id`;

/** The holds for which being of a lot is not enough to say whether a hull waits for them. */
export const boundedHolds = async (
  tx: EntityManager,
  plantId: string,
  lots: readonly string[],
): Promise<readonly FoundHold[]> => {
  const rows = await tx.query<Row[]>(BOUNDED, [plantId, lots]);
  const found: FoundHold[] = [];
  for (const row of rows) found.push(await toHold(tx, row));
  return found;
};
