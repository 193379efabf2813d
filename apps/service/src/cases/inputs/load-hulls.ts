import type { EntityManager } from 'typeorm';
import { claimedOn, isPrompted } from '../../platform/claims/claim.sql.js';
import { standing } from '../../platform/facts/standing.js';
import { dayOfLife, readRoll, type RolledHull, type RollFrom } from '../../platform/roll/read-roll.js';
import type { CaseSettings } from '../settings.js';

/** A hull with the days of its life that the case asks for: days of the plant, counted from 1970-01-01. */
export interface HullRow extends Pick<RolledHull, 'id' | 'number' | 'model' | 'built' | 'parts'> {
  readonly origin: number | null;
  readonly scrapped: number | null;
  readonly claims: readonly ClaimOfHull[];
}

interface ClaimOfHull {
  readonly on: number;
  readonly prompted: boolean;
  readonly recordedAt: string;
}

/** Standing claims of a kind, those of one hull by the day. */
const CLAIMS = `
  select c.hull_id as hull, ${claimedOn('c')} - date '1970-01-01' as on, ${isPrompted('c')} as prompted, to_json(c.recorded_at) as "recordedAt"
  from fact.claim c where c.plant_id = $1 and c.kind = $2 and ${standing('c')}
  order by ${claimedOn('c')}, c.recorded_at, c.id`;

type HullsAsked = Pick<CaseSettings, 'origin' | 'kind' | 'models' | 'builtFrom' | 'builtTo'>;

const DAY_MS = 86_400_000;
const NONE: readonly ClaimOfHull[] = [];

/** The hulls of a case, by number; to be read as one, see `readRoll`. */
export const loadHulls = async (
  tx: EntityManager,
  plantId: string,
  { origin, kind, models, builtFrom, builtTo }: HullsAsked,
  from: RollFrom = 'roll',
): Promise<HullRow[]> => {
  const claims = await claimsOf(tx, plantId, kind);
  const first = builtFrom === null ? -Infinity : Date.parse(builtFrom) / DAY_MS;
  const last = builtTo === null ? Infinity : Date.parse(builtTo) / DAY_MS;
  const hulls: HullRow[] = [];
  for (const hull of await readRoll(tx, plantId, from)) {
    const { id, number, model, built, parts } = hull;
    if (built < first || built > last || (models.length > 0 && !models.includes(model))) continue;
    hulls.push({
      ...{ id, number, model, built, parts, claims: claims.get(id) ?? NONE },
      ...{ origin: dayOfLife(hull, origin), scrapped: dayOfLife(hull, 'scrapped') },
    });
  }
  return hulls;
};

const claimsOf = async (
  tx: EntityManager,
  plantId: string,
  kind: string,
): Promise<ReadonlyMap<string, readonly ClaimOfHull[]>> => {
  const found = new Map<string, ClaimOfHull[]>();
  const rows = await tx.query<(ClaimOfHull & { readonly hull: string })[]>(CLAIMS, [plantId, kind]);
  for (const { hull, ...claim } of rows) {
    const own = found.get(hull);
    if (own) own.push(claim);
    else found.set(hull, [claim]);
  }
  return found;
};
