import type { Fact } from '../facts/fact.js';
import { openNewlyBroken } from '../facts/open-newly-broken.js';
import { standing } from '../facts/standing.js';
import { readScheduleLayer } from '../layers/find-schedule-layer.js';
import { foreignMaterials } from '../layers/foreign-materials.js';
import { brokenLotRules } from '../lots/break-of-lot-rules.js';
import { findLots } from '../lots/find-lots.js';
import { standingPlaces } from '../places/places.js';

/**
 * Lots that a correction says something new about: the lot, its material, its state, retest, hold or container, or what
 * went into it. When a lift or an acceptance never was, the hold or rejection went on.
 */
const TOUCHED = `
  select l.root as id from fact.lot l where l.id = any($1)
  union select l.root from fact.material m join fact.lot l on l.material_id = m.root where m.id = any($1)
  union select i.lot_id from fact.lot_input i where i.id = any($1)
  union select s.lot_id from fact.lot_state s where s.id = any($1)
  union select t.lot_id from fact.lot_retest t where t.id = any($1)
  union select h.lot_id from fact.hold h where h.id = any($1)
  union select c.lot_id from fact.container c where c.id = any($1)
  union select h.lot_id from fact.hold_lift f join fact.hold h on h.root = f.hold_id where f.id = any($1)
  union select c.lot_id from fact.container_fact f join fact.container c on c.root = f.container_id where f.id = any($1)`;

/** Facts that say how a lot or container stood from then on. What is lifted or accepted breaks nothing. */
const STATES = ['lot_state', 'lot_retest', 'hold', 'container_fact'] as const;

/** Lots that these facts say something about. */
const SAID = `
  select s.lot_id as id from fact.lot_state s where s.id = any($1)
  union select t.lot_id from fact.lot_retest t where t.id = any($1)
  union select h.lot_id from fact.hold h where h.id = any($1)
  union select c.lot_id from fact.container_fact f join fact.container c on c.root = f.container_id and ${standing('c')}
    where f.id = any($1) and f.what = 'rejected'`;

/** Draws of these lots, or whose own version is among those written; from an instant on. */
const DRAWS = `
  select u.lot_id as lot, u.container_id as container, u.happened_at as at, place.into_kind as about_kind, place.place_id as about,
    place.part_id as part, r.schedule_layer_id as layer
  from fact.used u
  join lateral (${standingPlaces('p.root = u.into_id')}) place on true
  left join fact.layer_record r on r.root = u.into_id and ${standing('r')}
  where (u.lot_id = any($1) or u.id = any($2)) and u.happened_at >= $3 and ${standing('u')}
  union all
  select i.input_id, i.container_id, l.happened_at, 'lot', l.root, null, null
  from fact.lot_input i join fact.lot l on l.root = i.lot_id and ${standing('l')}
  where (i.input_id = any($1) or i.id = any($2)) and l.happened_at >= $3 and ${standing('i')}
  order by 3, 5, 1`;

interface Draw {
  readonly lot: string;
  readonly container: string | null;
  readonly at: Date;
  readonly about_kind: string;
  readonly about: string;
  readonly part: string | null;
  readonly layer: string | null;
}

const DOWN = `
  with recursive down(id) as (
    select unnest($1::uuid[])
    union
    select i.lot_id from down join fact.lot_input i on i.input_id = down.id and ${standing('i')}
  ) select id from down`;

/**
 * Judges again what corrections, and what is said late of a lot, bring to light. Opens what was not known to be broken,
 * in the words in which it would have been opened on time; what is no longer so quality disposes of.
 */
export const judgeAgain = async (fact: Fact): Promise<void> => {
  await judgeCorrected(fact);
  await judgeSince(fact);
};

/** Anything drawn at any time. */
const EVER = '-infinity';

/** What was drawn of a lot that is known better now, and what was drawn of another lot than was thought. */
const judgeCorrected = async (fact: Fact): Promise<void> => {
  const corrections = fact.wrote('correction').flatMap(({ values }) => [values['corrects'], values['replacement']]);
  const ids = corrections.filter((id) => id !== null);
  if (ids.length === 0) return;
  const touched = await fact.tx.query<{ id: string }[]>(TOUCHED, [ids]);
  const down = touched.length === 0 ? [] : await fact.tx.query<{ id: string }[]>(DOWN, [touched.map(({ id }) => id)]);
  await judgeDraws(fact, [down.map(({ id }) => id), ids, EVER]);
};

/** What was drawn of a lot, or of a container of it, since it stood as is said now. */
const judgeSince = async (fact: Fact): Promise<void> => {
  const ids = STATES.flatMap((table) => fact.wrote(table).map(({ id }) => id));
  const said = ids.length === 0 ? [] : await fact.tx.query<{ id: string }[]>(SAID, [ids]);
  if (said.length > 0) await judgeDraws(fact, [said.map(({ id }) => id), [], fact.happenedAt]);
};

type Which = readonly [lots: readonly string[], versions: readonly unknown[], since: Date | typeof EVER];

const judgeDraws = async (fact: Fact, which: Which): Promise<void> => {
  for (const draw of await fact.tx.query<Draw[]>(DRAWS, [...which])) await judge(fact, draw);
};

const judge = async (fact: Fact, { lot, container, at, about_kind, about, part, layer }: Draw): Promise<void> => {
  const found = (await findLots(fact.tx, fact.author.plantId, [lot], at, container)).get(lot);
  if (!found) return;
  const foreign = layer === null ? [] : await foreignMaterials(fact.tx, await readScheduleLayer(fact.tx, layer), [lot]);
  const broken = [...brokenLotRules(found), ...foreign];
  await openNewlyBroken(fact, broken, { aboutKind: about_kind, aboutId: about, partId: part });
};
