import type { EntityManager } from 'typeorm';
import { textOf } from '../platform/texts/text-of.sql.js';
import { standing } from '../platform/facts/standing.js';

export interface HullRow {
  readonly id: string;
  readonly plant: string;
  readonly time_zone: string;
  readonly number: string;
  readonly model: string;
  readonly model_name: string;
  /** Kinds of parts without which a hull of this model is not released. */
  readonly required_parts: readonly string[];
}

const HULL = `
  select h.id, p.code as plant, p.time_zone, m.code as model, m.name as model_name, m.required_parts,
    (select n.as_printed from fact.hull_number n where n.hull_id = h.id and n.kind = 'hull number') as number
  from fact.hull h join fact.plant p on p.id = h.plant_id join fact.model m on m.id = h.model_id
  where h.id = $1 and ${standing('h', '$2')}`;

/** A hull as it was known at an instant; undefined when it had not been recorded by then. */
export const loadHull = async (tx: EntityManager, hullId: string, asOf: string): Promise<HullRow | undefined> => {
  const [hull] = await tx.query<HullRow[]>(HULL, [hullId, asOf]);
  return hull;
};

export interface HinRow {
  readonly as_printed: string;
  readonly reason: string | null;
  readonly by: string;
  readonly happened_at: Date;
}

const HINS = `
  select n.as_printed, n.reason, w.badge as by, n.happened_at
  from fact.hull_number n join fact.journal e on e.id = n.entry_id join fact.person w on w.id = e.person_id
  where n.hull_id = $1 and n.kind = 'HIN' and ${standing('n', '$2')} order by n.recorded_at, e.position`;

/** The HINs a hull was assigned, the one it has last. */
export const loadHins = (tx: EntityManager, hullId: string, asOf: string): Promise<HinRow[]> =>
  tx.query(HINS, [hullId, asOf]);

export interface LifeRow {
  readonly what: string;
  readonly dealer: string | null;
  readonly dealer_place: string | null;
  readonly note: string | null;
  readonly by: string;
  readonly happened_at: Date;
}

const LIFE = `
  select f.what, d.name as dealer, d.place as dealer_place, ${textOf('f', 'note')} as note, w.badge as by, f.happened_at
  from fact.life_fact f join fact.journal e on e.id = f.entry_id join fact.person w on w.id = e.person_id
  left join fact.dealer d on d.id = f.dealer_id
  where f.hull_id = $1 and ${standing('f', '$2')} order by f.happened_at, f.recorded_at, e.position`;

/** What happened in the life of a hull, in the order in which it happened. */
export const loadLife = (tx: EntityManager, hullId: string, asOf: string): Promise<LifeRow[]> =>
  tx.query(LIFE, [hullId, asOf]);

export interface JointRow {
  readonly id: string;
  readonly part_id: string;
  readonly part: string;
  readonly kind: string;
  readonly done_by: string[];
  readonly entered_by: string;
  readonly happened_at: Date;
}

const JOINTS = `
  select j.root as id, j.part_id, p.number as part, p.kind,
    array(select w.badge from fact.person w where w.id = any(j.makers) order by w.badge) as done_by,
    w.badge as entered_by, j.happened_at
  from fact.joint j join fact.part p on p.id = j.part_id
  join fact.journal e on e.id = j.entry_id join fact.person w on w.id = e.person_id
  where j.hull_id = $1 and ${standing('j', '$2')} order by j.happened_at, p.number`;

/** The parts that were in a hull, each by the joint that put it there; the hull molding by the hull's start. */
export const loadJoints = (tx: EntityManager, hullId: string, asOf: string): Promise<JointRow[]> =>
  tx.query(JOINTS, [hullId, asOf]);
