import type { EntityManager } from 'typeorm';
import type { HoldScope } from '@hull-record/trade';
import { columns } from '../reach/ask-reach.js';
import { placesOfContainer, placesOfMadeLot } from '../reach/places-of-made-lot.js';
import { REACH_OF_SOURCE, reachGiven } from '../reach/reach.sql.js';
import { perhapsDrawn } from '../store/holds.sql.js';
import { standing } from '../facts/standing.js';
import {
  CONTAINER_MEMBERS,
  ownersOfLot,
  OWNERS_OF_EQUIPMENT,
  OWNERS_OF_MOLD,
  OWNERS_OF_PERIOD,
} from './owners-reached.sql.js';

/** What a hold is on; all of it null: a period of the plant. */
export interface HeldOn {
  readonly plantId: string;
  readonly lotId: string | null;
  readonly containerId: string | null;
  readonly equipmentId: string | null;
  readonly moldId: string | null;
  readonly moldState: number | null;
}

/** A hull, or a part that is in none, that what is held went into. */
export interface ReachedOwner {
  /** Id of the hull, or of the part. */
  readonly owner: string;
  readonly hullId: string | null;
  readonly kg: number | null;
  /** Largest share of a layer within zone and period; null: none, or not a thing that has shares. */
  readonly share: number | null;
  /** It may be there, and nobody knows: it stays in whatever the scope. */
  readonly possibly: boolean;
  /** Whether the hold reaches it within its scope; else it is below. */
  readonly reached: boolean;
}

interface Row {
  readonly owner: string;
  readonly hull_id: string | null;
  readonly kg: number | null;
  readonly share: number | null;
  readonly possibly: boolean;
  readonly trace: boolean;
}

/**
 * Everything that what is held went into, each with whether the scope reaches it.
 *
 * What holds less than 1e-9 of a lot is known as a member alone, and is below any share.
 *
 * @param hullId only this hull
 */
export const reachOfHold = async (
  tx: EntityManager,
  on: HeldOn,
  scope: HoldScope,
  hullId: string | null = null,
): Promise<readonly ReachedOwner[]> => {
  const range = scope.from === null && scope.until === null ? null : `[${scope.from ?? ''},${scope.until ?? ''}]`;
  const [sql, thing, more] = await statementOf(tx, on);
  const rows = await tx.query<Row[]>(sql, [thing, hullId, scope.zone, range, ...more]);
  const hasShares = on.lotId !== null;
  return rows.map(({ owner, hull_id, kg, share, possibly, trace }) => {
    const inside = share !== null && !trace && share >= scope.minShare;
    return {
      ...{ owner, hullId: hull_id, kg },
      share: hasShares ? share : null,
      possibly: possibly && !inside,
      reached: inside || possibly,
    };
  });
};

type Statement = readonly [sql: string, thing: string, more: readonly unknown[]];

const statementOf = (tx: EntityManager, on: HeldOn): Promise<Statement> | Statement => {
  const { lotId, containerId, equipmentId, moldId, moldState, plantId } = on;
  if (lotId !== null) return containerId === null ? ofLot(tx, lotId) : ofContainer(tx, lotId, containerId);
  if (equipmentId !== null) return [OWNERS_OF_EQUIPMENT, equipmentId, []];
  if (moldId !== null) return [OWNERS_OF_MOLD, moldId, [moldState]];
  return [OWNERS_OF_PERIOD, plantId, []];
};

const ofLot = async (tx: EntityManager, lotId: string): Promise<Statement> => {
  const [lot] = await tx.query<{ received: boolean }[]>(
    `select l.origin in ('received', 'unidentified') as received from fact.lot l where l.root = $1 and ${standing('l')}`,
    [lotId],
  );
  if (lot?.received !== false) return [ownersOfLot(REACH_OF_SOURCE), lotId, []];
  return [ownersOfLot(reachGiven(5)), lotId, columns(await placesOfMadeLot(tx, lotId))];
};

/** What was drawn without naming a container is perhaps of this one, unless what named it accounts for all of it. */
const ofContainer = async (tx: EntityManager, lotId: string, containerId: string): Promise<Statement> => {
  const [box] = await tx.query<{ perhaps: boolean }[]>(
    `select ${perhapsDrawn('c')} as perhaps from fact.container c where c.root = $1 and ${standing('c')}`,
    [containerId],
  );
  const places = columns(await placesOfContainer(tx, lotId, containerId));
  return [ownersOfLot(reachGiven(5), CONTAINER_MEMBERS), lotId, [...places, box?.perhaps ?? true]];
};
