import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import type { BrokenRule } from '../platform/lots/break-of-lot-rules.js';
import type { FoundLayer } from './find-schedule-layer.js';

/** Received lots in these lots whose material the layer does not name; what is only mixed in is not named by schedules. */
const FOREIGN = `
  with recursive up(id) as (
    select unnest($1::uuid[])
    union
    select i.input_id from up join fact.lot_input i on i.lot_id = up.id and ${standing('i')}
  )
  select distinct l.code as lot, m.name as material from up
  join fact.lot l on l.root = up.id and ${standing('l')}
  join fact.material m on m.root = l.material_id and ${standing('m')}
  where m.role not in ('catalyst', 'promoter', 'inhibitor', 'pigment', 'release') and m.code <> all($2)
  order by 1`;

/** A material that the schedule does not allow in this layer is kept as used, and said. */
export const foreignMaterials = async (
  tx: EntityManager,
  layer: FoundLayer,
  lots: readonly string[],
): Promise<readonly BrokenRule[]> => {
  const found = await tx.query<{ lot: string; material: string }[]>(FOREIGN, [
    lots,
    layer.materials.map(({ material }) => material),
  ]);
  return found.map(({ lot, material }) => ({
    rule: 'material-not-in-schedule',
    detail: `${material} (lot ${lot}) is not a material of layer ${layer.name}.`,
  }));
};
