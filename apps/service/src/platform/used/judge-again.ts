import type { Fact } from '../facts/fact.js';
import { openNewlyBroken } from '../facts/open-newly-broken.js';
import { standing } from '../facts/standing.js';
import { readScheduleLayer } from '../layers/find-schedule-layer.js';
import { foreignMaterials } from '../layers/foreign-materials.js';
import { brokenLotRules } from '../lots/break-of-lot-rules.js';
import { findLots } from '../lots/find-lots.js';
import { standingPlaces } from '../places/places.js';

/** Lots that a correction says something new about: the lot, its material, its state or retest, or what went into it. */
const TOUCHED = `
  select l.root as id from fact.lot l where l.id = any($1)
  union select l.root from fact.material m join fact.lot l on l.material_id = m.root where m.id = any($1)
  union select i.lot_id from fact.lot_input i where i.id = any($1)
  union select s.lot_id from fact.lot_state s where s.id = any($1)
  union select t.lot_id from fact.lot_retest t where t.id = any($1)`;

/** Draws of these lots, or whose own version is among those written. */
const DRAWS = `
  select u.lot_id as lot, u.container_id as container, u.happened_at as at, place.into_kind as about_kind, place.place_id as about,
    place.part_id as part, r.schedule_layer_id as layer
  from fact.used u
  join lateral (${standingPlaces('p.root = u.into_id')}) place on true
  left join fact.layer_record r on r.root = u.into_id and ${standing('r')}
  where (u.lot_id = any($1) or u.id = any($2)) and ${standing('u')}
  union all
  select i.input_id, i.container_id, l.happened_at, 'lot', l.root, null, null
  from fact.lot_input i join fact.lot l on l.root = i.lot_id and ${standing('l')}
  where (i.input_id = any($1) or i.id = any($2)) and ${standing('i')}
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
 * Judges again what corrections bring to light: what was drawn of a lot that is known better now, and what was drawn of
 * another lot than was thought. Opens what was not known to be broken; what is no longer so quality disposes of.
 */
export const judgeAgain = async (fact: Fact): Promise<void> => {
  const corrections = fact.wrote('correction').flatMap(({ values }) => [values['corrects'], values['replacement']]);
  const ids = corrections.filter((id) => id !== null);
  if (ids.length === 0) return;
  const touched = await fact.tx.query<{ id: string }[]>(TOUCHED, [ids]);
  const down = touched.length === 0 ? [] : await fact.tx.query<{ id: string }[]>(DOWN, [touched.map(({ id }) => id)]);
  const draws = await fact.tx.query<Draw[]>(DRAWS, [down.map(({ id }) => id), ids]);
  for (const draw of draws) await judge(fact, draw);
};

const judge = async (fact: Fact, { lot, container, at, about_kind, about, part, layer }: Draw): Promise<void> => {
  const found = (await findLots(fact.tx, fact.author.plantId, [lot], at, container)).get(lot);
  if (!found) return;
  const foreign = layer === null ? [] : await foreignMaterials(fact.tx, await readScheduleLayer(fact.tx, layer), [lot]);
  const broken = [...brokenLotRules(found), ...foreign];
  await openNewlyBroken(fact, broken, { aboutKind: about_kind, aboutId: about, partId: part });
};
