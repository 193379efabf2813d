import { girthAt, type Place, type Skin } from '@hull-record/trade';
import type { EntityManager } from 'typeorm';
import { standing } from '../../platform/facts/standing.js';
import { claimedOn, isPrompted } from '../../platform/claims/claim.sql.js';
import type { CaseSettings } from '../settings.js';
import type { SpotOnHull } from './case-inputs.js';
import type { JudgedHulls } from './judge-hulls.js';

/** Of claims that count alone: in time, and not prompted. */
const SPOTS = `
  select at.place as hull, d.place, m.skins -> q.kind as skin
  from unnest($1::uuid[]) with ordinality as at(hull_id, place)
  join fact.claim c on c.hull_id = at.hull_id and c.kind = $2 and ${standing('c')}
    and ${claimedOn('c')} <= $3::date and c.reported_on <= $4::date and not ${isPrompted('c')}
  join fact.defect d on d.claim_id = c.root and ${standing('d')}
  join fact.part q on q.id = d.part_id and q.kind = 'hull molding' join fact.model m on m.id = q.model_id
  order by at.place, d.number`;

/** Where claims were on the shell, as shares of length and girth, so that models of one shape lie upon each other. */
export const loadSpots = async (
  tx: EntityManager,
  ids: readonly string[],
  kind: string,
  { watchedUntil, reportedBy }: Pick<JudgedHulls, 'watchedUntil' | 'reportedBy'>,
): Promise<Spots> => {
  const rows = await tx.query<{ hull: string; place: Place; skin: Skin | null }[]>(SPOTS, [
    ...[ids, kind],
    ...[watchedUntil, reportedBy],
  ]);
  const wet = BOTTOM_FAULTS.includes(kind) ? rows.flatMap(({ skin }) => (skin ? [wetPartOf(skin)] : [])) : [];
  const spots = rows.flatMap(({ hull, place, skin }) => {
    if (skin === null || place.surface !== 'shell') return [];
    const edge = girthAt(skin, place.fromTransomMm, 'edgeGirthMm');
    if (!edge) return [];
    const sign = place.side === 'port' ? 1 : place.side === 'starboard' ? -1 : 0;
    return [{ hull: Number(hull) - 1, x: place.fromTransomMm / skin.lengthMm, y: (sign * place.girthMm) / edge + 0 }];
  });
  return { spots, belowWater: wet.length === 0 ? null : wet.reduce((a, b) => a + b, 0) / wet.length };
};

/** Faults that come of lying in the water, and so are looked for below the waterline. */
const BOTTOM_FAULTS: readonly string[] = ['blister'];

const wetPartOf = ({ stations }: Skin): number => {
  const edge = stations.reduce((total, { edgeGirthMm }) => total + edgeGirthMm, 0);
  return Math.min(
    1,
    stations.reduce((total, { edgeGirthMm, waterlineGirthMm }) => total + (waterlineGirthMm ?? edgeGirthMm), 0) / edge,
  );
};

/** Places of claims, and what part of the girth of those hulls is below the waterline, where that matters. */
interface Spots {
  readonly spots: readonly SpotOnHull[];
  readonly belowWater: number | null;
}

/** SQL: the years of terms `t` for the kind `$3`: of the cover that names it, or else of the one for all that none names. */
const YEARS = `coalesce(
  (select max((cover ->> 'years')::int) from jsonb_array_elements(t.covers) cover where cover -> 'kinds' @> to_jsonb($3::text)),
  (select max((cover ->> 'years')::int) from jsonb_array_elements(t.covers) cover where cover -> 'kinds' = '[]'::jsonb))`;

/** Of versions that can hold for a hull whose time began by day `$4`, and the first one, which holds for older hulls. */
const CAP = `
  select max(${YEARS}) as years
  from fact.warranty_terms t join fact.model m on m.id = t.model_id join fact.plant p on p.id = t.plant_id
  where t.plant_id = $1 and (cardinality($2::text[]) = 0 or m.code = any($2)) and ${standing('t')}
    and ((t.happened_at at time zone p.time_zone)::date - date '1970-01-01' <= $4 or t.version = (
      select min(o.version) from fact.warranty_terms o where o.model_id = t.model_id and ${standing('o')}))`;

/** The age at which the longest cover of this kind ends, days; null when no terms say. */
export const loadWarrantyCap = async (
  tx: EntityManager,
  plantId: string,
  { models, kind }: Pick<CaseSettings, 'models' | 'kind'>,
  origins: readonly number[],
): Promise<number | null> => {
  const last = origins.reduce((latest, day) => Math.max(latest, day), 0);
  const [row] = await tx.query<{ years: number | null }[]>(CAP, [plantId, models, kind, last]);
  return row?.years === null || row?.years === undefined ? null : Math.round(row.years * 365.25);
};
