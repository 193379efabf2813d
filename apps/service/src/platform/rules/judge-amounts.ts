import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { judgeAlone, keepVerdicts, type Found } from '../verdicts/keep-verdict.js';
import { FILM, judgeFilm } from './film-against-use.js';
import { GLASS, judgeGlass } from './glass-against-schedule.js';
import type { LayerMade } from './layer-made.js';
import { judgeMeasured, THICKNESS } from './measured-thickness.js';
import { materialsIn } from './materials-in.js';

const MADE = `
  select r.part_id, r.ended_at, y.name, y.zone, y.code, y.area_m2, y.loss_allowance, y.laminate, y.schedule_id,
    m.code || ' version ' || s.version as schedule
  from fact.layer_record r join fact.schedule_layer y on y.id = r.schedule_layer_id
  join fact.schedule s on s.id = y.schedule_id join fact.model m on m.id = s.model_id
  where r.root = $1 and ${standing('r')}`;

const USED = `select u.lot_id as lot, u.kg from fact.used u where u.into_id = $1 and ${standing('u')}`;

const judge = async (fact: Fact, layer: string, made: LayerMade): Promise<readonly (Found | undefined)[]> => {
  const used = await fact.tx.query<{ lot: string; kg: number }[]>(USED, [layer]);
  const materials = used.length === 0 ? [] : await materialsIn(fact.tx, used, made.ended_at);
  return [
    await judgeFilm(fact.tx, layer, made, materials),
    judgeGlass(made, materials),
    await judgeMeasured(fact.tx, layer, made),
  ];
};

/** Topics of what a layer took against what it was to take, or became. */
const TOPICS = [FILM, GLASS, THICKNESS];

/** Rules that follow what is entered later: half of the buckets of a layer are no finding when the others come. */
const FOLLOWING = ['film-does-not-fit', 'glass-outside-schedule', 'thickness-outside'];

/** Judges what was used in a layer against the film and the thickness read on it, and against its schedule. */
export const judgeAmounts = async (fact: Fact, layer: string): Promise<void> => {
  await judgeAlone(fact, 'amounts', layer);
  const [made] = await fact.tx.query<LayerMade[]>(MADE, [layer]);
  if (!made) return;
  const found = made.area_m2 === null && made.laminate === null ? [] : await judge(fact, layer, made);
  const about = { aboutKind: 'layer', aboutId: layer, partId: made.part_id };
  await keepVerdicts(
    fact,
    about,
    TOPICS,
    found.filter((each) => each !== undefined),
    FOLLOWING,
  );
};
