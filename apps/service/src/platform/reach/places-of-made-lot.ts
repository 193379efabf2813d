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

/** From which lot something was drawn, and from which container of it when one was named. */
interface Drawn {
  readonly from: string;
  readonly container_id: string | null;
}

const fromContainer = ({ from, container_id }: Drawn, lotId: string, containerId: string): string =>
  from === lotId && container_id === containerId ? containerId : from;

const USED = `
  select u.into_id, place.part_id, u.into_kind, u.lot_id as from, u.container_id, u.kg, u.basis, u.happened_at
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
export const placesOfMadeLot = (tx: EntityManager, lotId: string): Promise<readonly ReachedPlace[]> =>
  placesOf(tx, lotId, lotId);

/** Where the contents of one container of a lot went, as far as the container was named. */
export const placesOfContainer = (
  tx: EntityManager,
  lotId: string,
  containerId: string,
): Promise<readonly ReachedPlace[]> => placesOf(tx, lotId, containerId);

/** @param sourceId the lot, or the container of it, from which the walk begins; a container is an input of its own */
const placesOf = async (tx: EntityManager, lotId: string, sourceId: string): Promise<readonly ReachedPlace[]> => {
  const drawn = sourceId === lotId ? (row: Drawn) => row.from : (row: Drawn) => fromContainer(row, lotId, sourceId);
  const graph = await loadDownstream(tx, lotId, sourceId);
  const fractions = fractionsDownstream(sourceId, graph);
  const weakness = weaknessDownstream(sourceId, graph);
  const composition = resolveComposition(lotId, await loadUpstream(tx, [lotId]));
  const roles = new Map<string, number>();
  for (const { role, fraction } of composition) roles.set(role, (roles.get(role) ?? 0) + fraction);
  const used = await tx.query<(UsedRow & Drawn)[]>(USED, [[...new Set([...fractions.keys(), lotId])]]);
  const places = new Map<string, ReachedPlace>();
  for (const given of used) {
    const row = { ...given, lot_id: drawn(given) };
    const fraction = fractions.get(row.lot_id);
    if (fraction === undefined) continue;
    const kg = row.kg * fraction;
    const weakest = Math.max(weaknessOf(row.basis), weakness.get(row.lot_id) ?? 0);
    for (const [role, ofRole] of roles) add(places, row, role, kg * ofRole, weakest);
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
