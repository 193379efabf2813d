import { standing } from '../platform/facts/standing.js';
import { layersOf } from '../platform/layers/layers-of-part.sql.js';
import { isOpenDefect } from '../platform/release/open.js';
import { whereabouts } from '../platform/life/whereabouts.js';

/** SQL: the HIN that a hull has now, or null. */
export const CURRENT_HIN = `(
  select n.as_printed from fact.hull_number n where n.hull_id = h.id and n.kind = 'HIN'
  order by n.recorded_at desc, n.id limit 1)`;

/** SQL: the builder's number of a hull. */
export const HULL_NUMBER = `(select n.as_printed from fact.hull_number n where n.hull_id = h.id and n.kind = 'hull number' limit 1)`;

const layers = (of: string): string => `(
  select count(*)::int from fact.joint j join fact.part p on p.id = j.part_id ${of} where j.hull_id = h.id and ${standing('j')})`;

/** SQL of a hull as lists show it. */
export const HULL_COLUMNS = `
  h.id, ${HULL_NUMBER} as number, ${CURRENT_HIN} as hin, m.code as model, m.name as "modelName",
  h.happened_at as "startedAt",
  ${layers(`join fact.layer_record r on r.part_id = p.id and ${standing('r')}`)} as "layersMade",
  ${layers(`cross join lateral ${layersOf('p')} y`)} as "layersScheduled",
  (select count(*)::int from fact.joint j join fact.defect d on d.part_id = j.part_id and ${standing('d')} and ${isOpenDefect('d')}
    where j.hull_id = h.id and ${standing('j')}) as "openDefects",
  ${whereabouts('h.id')} as now`;

export const HULL_TABLES = 'fact.hull h join fact.model m on m.id = h.model_id';
