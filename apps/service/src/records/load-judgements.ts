import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import type { NonconformityRow } from '../platform/views/faults.js';

export interface DispositionRow {
  readonly of_id: string;
  readonly disposition: string;
  readonly concession: string | null;
  readonly reason: string;
  readonly by: string;
  readonly happened_at: Date;
}

const DISPOSITIONS = `
  select o.of_id, o.disposition, o.concession, o.reason, w.badge as by, o.happened_at
  from fact.disposition o join fact.journal e on e.id = o.entry_id join fact.person w on w.id = e.person_id
  where o.of_id = any($1) and ${standing('o', '$2')} order by o.recorded_at, e.position`;

/** What was decided about defects, readings and nonconformities, by what it is about; the last word counts. */
export const loadDispositions = async (
  tx: EntityManager,
  about: readonly string[],
  asOf: string,
): Promise<ReadonlyMap<string, DispositionRow>> => {
  const rows = await tx.query<DispositionRow[]>(DISPOSITIONS, [about, asOf]);
  return new Map(rows.map((row) => [row.of_id, row]));
};

const OF_HULL = `
  select c.root as id, c.part_id, c.rule, c.detail, c.happened_at, null as disposition, null as concession
  from fact.nonconformity c
  where c.part_id is null and ((c.about_kind = 'hull' and c.about_id = $1) or c.about_id = any($2)) and ${standing('c', '$3')}
  order by c.happened_at, c.rule, c.detail, c.root`;

/** Nonconformities of the hull itself and of lots that are in it, those with no part of their own. */
export const loadHullNonconformities = (
  tx: EntityManager,
  hullId: string,
  lots: readonly string[],
  asOf: string,
): Promise<NonconformityRow[]> => tx.query(OF_HULL, [hullId, lots, asOf]);

export interface HeldLotRow {
  readonly code: string;
  readonly state: string;
}

const NOT_RELEASED = `
  select l.code, s.state from fact.lot l, lateral (
    select s.state from fact.lot_state s where s.lot_id = l.root and ${standing('s', '$2')}
    order by s.happened_at desc, s.recorded_at desc, s.id limit 1) s
  where l.root = any($1) and ${standing('l', '$2')} and s.state <> 'released' order by l.code`;

/** Lots among these that were not released; a lot of which nobody said anything is. */
export const loadLotsNotReleased = (tx: EntityManager, lots: readonly string[], asOf: string): Promise<HeldLotRow[]> =>
  tx.query(NOT_RELEASED, [lots, asOf]);

export interface MaterialRow {
  readonly code: string;
  readonly name: string;
  readonly role: string;
}

const MATERIALS = `
  select m.code, m.name, m.role from fact.material m
  where m.code = any($2) and m.plant_id = (select h.plant_id from fact.hull h where h.id = $1) and ${standing('m', '$3')}`;

/** Materials that schedules name, by code. */
export const loadMaterials = async (
  tx: EntityManager,
  hullId: string,
  codes: readonly string[],
  asOf: string,
): Promise<ReadonlyMap<string, MaterialRow>> => {
  const rows = await tx.query<MaterialRow[]>(MATERIALS, [hullId, codes, asOf]);
  return new Map(rows.map((row) => [row.code, row]));
};
