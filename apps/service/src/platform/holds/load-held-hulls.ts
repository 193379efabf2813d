import type { EntityManager } from 'typeorm';
import { hullStateAfter, isDisposed, LEFT_FACTS, type HullDisposition, type HullState } from '@hull-record/trade';
import { standing } from '../facts/standing.js';
import { whereabouts } from '../life/whereabouts.js';
import type { FoundHold } from './find-hold.js';
import { reachOfHold } from './reach-of-hold.js';

/** Something that was said of a held hull, with who said it. */
export interface SaidOfHull {
  readonly id: string;
  readonly what: HullDisposition;
  readonly doneBy: readonly string[];
  readonly note: string | null;
  readonly evidence: string | null;
  readonly happenedAt: string;
  readonly by: string;
}

/** A hull, or a part that is in none, that a hold reaches or reached. */
export interface HeldRow {
  /** Sorts: the hull number, and after all of them the parts that are in none. */
  readonly key: string;
  readonly owner: string;
  readonly hullId: string | null;
  readonly hull: string | null;
  readonly hin: string | null;
  readonly part: string | null;
  readonly model: string;
  readonly modelName: string;
  readonly state: HullState;
  readonly dealer: string | null;
  readonly leftAt: string | null;
  /** When it was first released, which ends its manufacture; null: never. */
  readonly builtAt: string | null;
  readonly startedAt: string;
  readonly reached: boolean;
  readonly kg: number | null;
  readonly share: number | null;
  readonly possibly: boolean;
  readonly atHold: { readonly share: number | null; readonly state: string } | null;
  readonly disposed: boolean;
  /** The oldest first. */
  readonly said: readonly SaidOfHull[];
}

/** The hulls of a hold, in the order of their numbers, and how many more hold less than it reaches. */
export interface HeldHulls {
  readonly rows: readonly HeldRow[];
  readonly below: number;
}

const firstOf = (
  what: readonly string[],
): string => `(select to_char(min(f.happened_at) at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')
  from fact.life_fact f where f.hull_id = h.id and f.what in (${what.map((each) => `'${each}'`).join(', ')}) and ${standing('f')})`;

const SAID = (of: string): string => `coalesce((
  select json_agg(json_build_object('id', d.root, 'what', d.what, 'note', d.note, 'evidence', d.evidence, 'happenedAt',
      to_char(d.happened_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'),
      'by', (select w.badge from fact.journal e join fact.person w on w.id = e.person_id where e.id = d.entry_id),
      'doneBy', array(select w.badge from fact.person w where w.id = any(d.makers) order by w.badge))
    order by d.happened_at, d.recorded_at, d.id)
  from fact.hold_disposition d where d.hold_id = $1 and d.${of} and ${standing('d')}), '[]')`;

const ISO = `'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'`;

/** Hulls `$2` and parts `$3` with what is known of them apart from the hold `$1`. */
const DETAILS = `
  select n.normalised as key, h.id as owner, n.as_printed as hull,
    (select x.as_printed from fact.hull_number x where x.hull_id = h.id and x.kind = 'HIN' order by x.recorded_at desc, x.id limit 1) as hin,
    null as part, m.code as model, m.name as "modelName", ${whereabouts('h.id')} as now, ${firstOf(LEFT_FACTS)} as "leftAt",
    ${firstOf(['released'])} as "builtAt", to_char(h.happened_at at time zone 'UTC', ${ISO}) as "startedAt", ${SAID('hull_id = h.id')} as said
  from fact.hull h join fact.model m on m.id = h.model_id join fact.hull_number n on n.hull_id = h.id and n.kind = 'hull number'
  where h.id = any($2::uuid[])
  union all
  select '~' || p.number, p.id, null, null, p.number, m.code, m.name, null, null, null,
    to_char(p.happened_at at time zone 'UTC', ${ISO}), ${SAID('part_id = p.id')}
  from fact.part p join fact.model m on m.id = p.model_id where p.id = any($3::uuid[])
  order by 1`;

interface Detail extends Pick<HeldRow, 'key' | 'owner' | 'hull' | 'hin' | 'part' | 'model' | 'modelName' | 'leftAt'> {
  readonly builtAt: string | null;
  readonly startedAt: string;
  readonly now: { readonly what: string; readonly dealer: string | null } | null;
  readonly said: readonly SaidOfHull[];
}

/** The list as it was kept when the hold was placed; a part that was joined since stands under its hull. */
const AT_HOLD = `
  select coalesce(r.hull_id, j.hull_id, r.part_id) as owner, coalesce(r.hull_id, j.hull_id) as hull_id, max(r.share) as share,
    min(r.state) as state
  from fact.hold_reached r left join fact.joint j on j.part_id = r.part_id and ${standing('j')}
  where r.hold_id = $1 and ${standing('r')} group by 1, 2`;

interface AtHold {
  readonly owner: string;
  readonly hull_id: string | null;
  readonly share: number | null;
  readonly state: string;
}

/**
 * Loads every hull that a hold reaches now or reached when it was placed, with what is said of each.
 *
 * @param tx sees one moment, else hulls and their states may not fit together
 */
export const loadHeldHulls = async (tx: EntityManager, hold: FoundHold): Promise<HeldHulls> => {
  const reach = await reachOfHold(tx, hold, hold.scope);
  const kept = await tx.query<AtHold[]>(AT_HOLD, [hold.id]);
  const reached = new Map(reach.filter((each) => each.reached).map((each) => [each.owner, each]));
  const atHold = new Map(kept.map((each) => [each.owner, each]));
  const owners = [...reached.values(), ...kept.map(({ owner, hull_id }) => ({ owner, hullId: hull_id }))];
  const ids = (hulls: boolean): string[] => [
    ...new Set(owners.filter(({ hullId }) => (hullId !== null) === hulls).map(({ owner }) => owner)),
  ];
  const details = await tx.query<Detail[]>(DETAILS, [hold.id, ids(true), ids(false)]);
  const rows = details.map((detail) => toRow(detail, reached.get(detail.owner), atHold.get(detail.owner)));
  return { rows, below: reach.length - reached.size };
};

type Reached = Awaited<ReturnType<typeof reachOfHold>>[number];

const toRow = ({ now, ...detail }: Detail, reached: Reached | undefined, kept: AtHold | undefined): HeldRow => {
  const state = hullStateAfter(now?.what ?? null, now?.dealer ?? null);
  return {
    ...detail,
    hullId: detail.hull === null ? null : detail.owner,
    state,
    dealer: now?.dealer ?? null,
    reached: reached !== undefined,
    kg: reached?.kg ?? null,
    share: reached?.share ?? null,
    possibly: reached?.possibly ?? false,
    atHold: kept === undefined ? null : { share: kept.share, state: kept.state },
    disposed: isDisposed(state, detail.said.at(-1)?.what ?? null),
  };
};
