import type { EntityManager } from 'typeorm';
import { claimedOn, isPrompted } from '../../platform/claims/claim.sql.js';
import { standing } from '../../platform/facts/standing.js';
import { readRoll, type RolledHull, type RollFrom } from '../../platform/roll/read-roll.js';
import type { CaseSettings } from '../settings.js';

/** The hulls of a case, by number, each made as it is come to, and their claims of its kind. */
export interface HullsOfCase {
  readonly hulls: Iterable<RolledHull>;
  /** Claims by the id of the hull, the first ones first. */
  readonly claims: ReadonlyMap<string, readonly ClaimOfHull[]>;
  /** Days on which the first letter of a notice that reached it was mailed, by the id of the hull. */
  readonly letters: ReadonlyMap<string, number>;
}

/** Days are those of the plant, counted from 1970-01-01. */
export interface ClaimOfHull {
  readonly on: number;
  readonly reported: number;
  readonly prompted: boolean;
  readonly recordedAt: string;
}

/** Standing claims of a kind, those of one hull by the day. */
const CLAIMS = `
  select c.hull_id as hull, ${claimedOn('c')} - date '1970-01-01' as on,
    c.reported_on - date '1970-01-01' as reported, ${isPrompted('c')} as prompted, to_json(c.recorded_at) as "recordedAt"
  from fact.claim c where c.plant_id = $1 and c.kind = $2 and ${standing('c')}
  order by ${claimedOn('c')}, c.recorded_at, c.id`;

/** From the day on which it was mailed, whatever is claimed counts as prompted by it. */
const LETTERS = `
  select m.hull_id as hull, min((m.happened_at at time zone p.time_zone)::date) - date '1970-01-01' as day
  from fact.notice_mailing m join fact.plant p on p.id = m.plant_id
  where m.plant_id = $1 and ${standing('m')}
    and not exists (select from fact.mailing_returned r where r.mailing_id = m.root and ${standing('r')})
  group by m.hull_id`;

type HullsAsked = Pick<CaseSettings, 'kind' | 'models' | 'builtFrom' | 'builtTo'>;

const DAY_MS = 86_400_000;

/** The hulls of a case; to be read as one, see `readRoll`. */
export const loadHulls = async (
  tx: EntityManager,
  plantId: string,
  { kind, models, builtFrom, builtTo }: HullsAsked,
  from: RollFrom = 'roll',
): Promise<HullsOfCase> => {
  const first = builtFrom === null ? -Infinity : Date.parse(builtFrom) / DAY_MS;
  const last = builtTo === null ? Infinity : Date.parse(builtTo) / DAY_MS;
  const roll = await readRoll(tx, plantId, from);
  const asked = ({ model, built }: RolledHull): boolean =>
    built >= first && built <= last && (models.length === 0 || models.includes(model));
  const letters = await tx.query<{ hull: string; day: number }[]>(LETTERS, [plantId]);
  return {
    hulls: { [Symbol.iterator]: () => those(roll, asked) },
    claims: await claimsOf(tx, plantId, kind),
    letters: new Map(letters.map(({ hull, day }) => [hull, day])),
  };
};

function* those(hulls: Iterable<RolledHull>, asked: (hull: RolledHull) => boolean): Generator<RolledHull, undefined> {
  for (const hull of hulls) if (asked(hull)) yield hull;
}

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
