import { girthAt, type Place, type Skin } from '@hull-record/trade';
import type { EntityManager } from 'typeorm';
import { standing } from '../../platform/facts/standing.js';
import type { SpotOnHull } from './case-inputs.js';

const SPOTS = `
  select at.place as hull, d.place, m.skins -> q.kind as skin
  from unnest($1::uuid[]) with ordinality as at(hull_id, place)
  join fact.claim c on c.hull_id = at.hull_id and c.kind = $2 and ${standing('c')}
  join fact.defect d on d.claim_id = c.root and ${standing('d')}
  join fact.part q on q.id = d.part_id and q.kind = 'hull molding' join fact.model m on m.id = q.model_id
  order by at.place, d.number`;

/** Where claims were on the shell, as shares of length and girth, so that models of one shape lie upon each other. */
export const loadSpots = async (
  tx: EntityManager,
  ids: readonly string[],
  kind: string,
): Promise<readonly SpotOnHull[]> => {
  const rows = await tx.query<{ hull: string; place: Place; skin: Skin | null }[]>(SPOTS, [ids, kind]);
  return rows.flatMap(({ hull, place, skin }) => {
    if (skin === null || place.surface !== 'shell') return [];
    const edge = girthAt(skin, place.fromTransomMm, 'edgeGirthMm');
    if (!edge) return [];
    const sign = place.side === 'port' ? 1 : place.side === 'starboard' ? -1 : 0;
    return [{ hull: Number(hull) - 1, x: place.fromTransomMm / skin.lengthMm, y: (sign * place.girthMm) / edge + 0 }];
  });
};

const CAP = `
  select max((cover ->> 'years')::int) as years from fact.warranty_terms t join fact.model m on m.id = t.model_id,
    lateral jsonb_array_elements(t.covers) cover
  where t.plant_id = $1 and (cardinality($2::text[]) = 0 or m.code = any($2)) and ${standing('t')}
    and (cover -> 'kinds' @> to_jsonb($3::text) or cover -> 'kinds' = '[]'::jsonb)`;

/** The age at which the longest cover of this kind ends, days; null when no terms say. */
export const loadWarrantyCap = async (
  tx: EntityManager,
  plantId: string,
  models: readonly string[],
  kind: string,
): Promise<number | null> => {
  const [row] = await tx.query<{ years: number | null }[]>(CAP, [plantId, models, kind]);
  return row?.years === null || row?.years === undefined ? null : Math.round(row.years * 365.25);
};
