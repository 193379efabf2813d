import type { EntityManager } from 'typeorm';
import { fractionsDownstream, resolveComposition, type LotNode } from '@hull-record/genealogy';
import { weaknessOf, basisOf } from '../composition/basis.js';
import { loadUpstream } from '../composition/load-upstream.js';
import { standing } from '../facts/standing.js';
import { standingPlaces } from '../places/places.js';
import { loadDownstream } from './load-downstream.js';

/** Kilograms of one role of a made lot in one layer, joint or repair. */
export interface ReachedPlace {
  readonly placeId: string;
  readonly partId: string;
  readonly intoKind: string;
  readonly role: string;
  readonly kg: number;
  readonly basis: string;
  readonly firstAt: Date;
  readonly lastAt: Date;
}

const USED = `
  select u.into_id, place.part_id, u.into_kind, u.lot_id, u.kg, u.basis, u.happened_at
  from fact.used u
  cross join lateral (${standingPlaces('p.root = u.into_id')}) place
  where u.lot_id = any($1) and ${standing('u')} order by u.into_id, u.happened_at, u.id`;

interface UsedRow {
  readonly into_id: string;
  readonly part_id: string;
  readonly into_kind: string;
  readonly lot_id: string;
  readonly kg: number;
  readonly basis: string;
  readonly happened_at: Date;
}

/**
 * Where a bucket, kit or tank lot went, by role of what it is made of.
 *
 * Only received lots are kept per place; a made lot is walked forward when it is asked about, with its fractions.
 */
export const placesOfMadeLot = async (tx: EntityManager, lotId: string): Promise<readonly ReachedPlace[]> => {
  const graph = await loadDownstream(tx, lotId);
  const fractions = fractionsDownstream(lotId, graph);
  const weakness = weaknessDownstream(lotId, graph);
  const composition = resolveComposition(lotId, await loadUpstream(tx, [lotId]));
  const roles = new Map<string, number>();
  for (const { role, fraction } of composition) roles.set(role, (roles.get(role) ?? 0) + fraction);
  const used = await tx.query<UsedRow[]>(USED, [[...fractions.keys()]]);
  const places = new Map<string, ReachedPlace>();
  for (const row of used) {
    const kg = row.kg * (fractions.get(row.lot_id) ?? 0);
    const weakest = Math.max(weaknessOf(row.basis), weakness.get(row.lot_id) ?? 0);
    for (const [role, fraction] of roles) add(places, row, role, kg * fraction, weakest);
  }
  return [...places.values()];
};

const add = (places: Map<string, ReachedPlace>, row: UsedRow, role: string, kg: number, weakest: number): void => {
  const key = `${row.into_id}/${role}`;
  const before = places.get(key);
  places.set(key, {
    placeId: row.into_id,
    partId: row.part_id,
    intoKind: row.into_kind,
    role,
    kg: kg + (before?.kg ?? 0),
    basis: basisOf(Math.max(weakest, before ? weaknessOf(before.basis) : 0)),
    firstAt: before && before.firstAt < row.happened_at ? before.firstAt : row.happened_at,
    lastAt: before && before.lastAt > row.happened_at ? before.lastAt : row.happened_at,
  });
};

/** The weakest basis on any way from the lot to each lot made of it. */
const weaknessDownstream = (lotId: string, graph: ReadonlyMap<string, LotNode>): ReadonlyMap<string, number> => {
  const known = new Map<string, number>([[lotId, 0]]);
  let grew = true;
  while (grew) {
    grew = false;
    for (const { id, inputs } of graph.values()) {
      const ways = inputs.flatMap(({ lot, weakness }) =>
        known.has(lot) ? [Math.max(known.get(lot) ?? 0, weakness ?? 0)] : [],
      );
      const weakest = Math.max(...ways);
      if (ways.length > 0 && id !== lotId && weakest > (known.get(id) ?? -1)) {
        known.set(id, weakest);
        grew = true;
      }
    }
  }
  return known;
};
