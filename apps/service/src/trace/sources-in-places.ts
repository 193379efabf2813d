import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { placeLabel } from '../platform/reach/reach.sql.js';

/** Kilograms of a received lot in one place, and the lots that were used there. */
export interface SourceInPlace {
  readonly place_id: string;
  readonly label: string;
  readonly into_kind: string;
  readonly part: string;
  readonly source_id: string;
  readonly role: string;
  readonly kg: number;
  readonly share: number;
  readonly basis: string;
  readonly used: string[];
}

const FIND = `
  select s.place_id, ${placeLabel('s.place_id', 's.into_kind')} as label, s.into_kind, p.number as part, s.source_id, s.role,
    s.kg, s.kg / t.kg as share, s.basis,
    array(select distinct u.lot_id from fact.used u where u.into_id = s.place_id and ${standing('u')}) as used
  from derived.place_source s
  join derived.place_role t on t.place_id = s.place_id and t.role = s.role
  join fact.part p on p.id = s.part_id
  where s.source_id is not null and (s.part_id = any($1) or s.place_id = any($2))
  order by s.first_at, s.place_id, s.role, s.source_id`;

/** What is in all places of some parts, or in some places. */
export const sourcesInPlaces = (
  tx: EntityManager,
  of: { parts?: readonly string[]; places?: readonly string[] },
): Promise<SourceInPlace[]> => tx.query(FIND, [of.parts ?? [], of.places ?? []]);
