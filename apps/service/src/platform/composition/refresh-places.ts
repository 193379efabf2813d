import type { EntityManager } from 'typeorm';
import { resolveComposition, type Composition } from '@hull-record/genealogy';
import { basisOf, weaknessOf } from './basis.js';
import { loadUpstream } from './load-upstream.js';
import { sumByRole, sumBySource, type SourceInPlace, type UsedAmount } from './sum-place.js';
import { MARK_EXPOSURE } from '../exposure/stale.sql.js';
import { standing } from '../facts/standing.js';
import { standingPlaces } from '../places/places.js';

const PLACES = standingPlaces('p.root = any($1)');

const DELETE_SOURCES = `
  with changed as (delete from derived.place_source where place_id = any($1) returning source_id) ${MARK_EXPOSURE}`;

interface Place {
  readonly place_id: string;
  readonly part_id: string;
  readonly into_kind: string;
}

interface UsedRow {
  readonly into_id: string;
  readonly lot_id: string;
  readonly kg: number;
  readonly basis: string;
  readonly happened_at: Date;
}

const USED = `select u.into_id, u.lot_id, u.kg, u.basis, u.happened_at from fact.used u where u.into_id = any($1) and ${standing('u')}`;

/**
 * Works out anew what is in each of these layers, joints and repairs.
 *
 * One of many locks each place first, in the order of its id: of two who add to one place at once, the second sees the
 * first. Who has the genealogy alone needs no such locks, and for the many places a correction can reach the server
 * would run out of them.
 */
export const refreshPlaces = async (
  tx: EntityManager,
  touched: readonly string[],
  as: 'one of many' | 'alone',
): Promise<void> => {
  if (touched.length === 0) return;
  const ids = [...new Set(touched)].sort();
  if (as === 'one of many') await lockPlaces(tx, ids);
  const places = await tx.query<Place[]>(PLACES, [ids]);
  const used = await tx.query<UsedRow[]>(USED, [ids]);
  const composition = await compositionsOf(tx, used);
  await tx.query(DELETE_SOURCES, [ids]);
  await tx.query('delete from derived.place_role where place_id = any($1)', [ids]);
  const byPlace = new Map<string, UsedRow[]>(ids.map((id) => [id, []]));
  for (const row of used) byPlace.get(row.into_id)?.push(row);
  const sums = places.map((place) => {
    const amounts = (byPlace.get(place.place_id) ?? []).map((row) => toAmount(row, composition));
    return { place, sources: sumBySource(amounts) };
  });
  await keepSources(tx, sums);
  await keepRoles(tx, sums);
};

const lockPlaces = async (tx: EntityManager, ids: readonly string[]): Promise<void> => {
  for (const id of ids) await tx.query('select pg_advisory_xact_lock(hashtextextended($1, 2))', [id]);
};

const compositionsOf = async (
  tx: EntityManager,
  used: readonly UsedRow[],
): Promise<ReadonlyMap<string, Composition>> => {
  const lots = [...new Set(used.map((row) => row.lot_id))];
  const graph = await loadUpstream(tx, lots);
  return new Map(lots.map((lot) => [lot, resolveComposition(lot, graph)]));
};

const toAmount = (row: UsedRow, compositions: ReadonlyMap<string, Composition>): UsedAmount => ({
  kg: row.kg,
  weakness: weaknessOf(row.basis),
  at: row.happened_at,
  composition: compositions.get(row.lot_id) ?? [],
});

interface PlaceSums {
  readonly place: Place;
  readonly sources: readonly SourceInPlace[];
}

/** All places in one statement: a correction can reach thousands. */
const keepSources = (tx: EntityManager, sums: readonly PlaceSums[]): Promise<unknown> => {
  const rows = sums.flatMap(({ place, sources }) => sources.map((source) => ({ ...place, ...source })));
  return tx.query(
    `with changed as (
       insert into derived.place_source (place_id, part_id, into_kind, role, source_id, kg, basis, first_at, last_at)
       select * from unnest($1::uuid[], $2::uuid[], $3::text[], $4::text[], $5::uuid[], $6::float8[], $7::text[],
         $8::timestamptz[], $9::timestamptz[]) returning source_id)
     ${MARK_EXPOSURE}`,
    [
      ...[rows.map((row) => row.place_id), rows.map((row) => row.part_id), rows.map((row) => row.into_kind)],
      ...[rows.map((row) => row.role), rows.map((row) => row.source), rows.map((row) => row.kg)],
      ...[rows.map((row) => basisOf(row.weakness)), rows.map((row) => row.firstAt), rows.map((row) => row.lastAt)],
    ],
  );
};

const keepRoles = (tx: EntityManager, sums: readonly PlaceSums[]): Promise<unknown> => {
  const rows = sums.flatMap(({ place, sources }) => sumByRole(sources).map((role) => ({ ...place, ...role })));
  return tx.query(
    `insert into derived.place_role (place_id, part_id, role, kg)
     select * from unnest($1::uuid[], $2::uuid[], $3::text[], $4::float8[])`,
    [
      ...[rows.map((row) => row.place_id), rows.map((row) => row.part_id)],
      ...[rows.map((row) => row.role), rows.map((row) => row.kg)],
    ],
  );
};
