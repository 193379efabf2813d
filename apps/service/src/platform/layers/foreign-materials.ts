import type { EntityManager } from 'typeorm';
import { resolveComposition } from '@hull-record/genealogy';
import { loadUpstream } from '../composition/load-upstream.js';
import { standing } from '../facts/standing.js';
import type { BrokenRule } from '../lots/break-of-lot-rules.js';
import type { FoundLayer } from './find-schedule-layer.js';

/**
 * Less than this fraction of what was used is not held against a layer. Common practice: a tank that once held another
 * material would otherwise be held against every layer for ever.
 */
const NOTICED = 1e-3;

/** Materials of received lots that a layer does not name; what is only mixed in is not named by schedules. */
const FOREIGN = `
  select distinct l.code as lot, m.name as material from fact.lot l
  join fact.material m on m.root = l.material_id and ${standing('m')}
  where l.root = any($1) and ${standing('l')}
    and m.role not in ('catalyst', 'promoter', 'inhibitor', 'pigment', 'release') and m.code <> all($2)
  order by 1`;

/** A material that the schedule does not allow in this layer is kept as used, and said. */
export const foreignMaterials = async (
  tx: EntityManager,
  layer: FoundLayer,
  lots: readonly string[],
): Promise<readonly BrokenRule[]> => {
  const found = await tx.query<{ lot: string; material: string }[]>(FOREIGN, [
    await noticedSources(tx, lots),
    layer.materials.map(({ material }) => material),
  ]);
  return found.map(({ lot, material }) => ({
    rule: 'material-not-in-schedule',
    detail: `${material} (lot ${lot}) is not a material of layer ${layer.name}.`,
  }));
};

const noticedSources = async (tx: EntityManager, lots: readonly string[]): Promise<readonly string[]> => {
  const graph = await loadUpstream(tx, lots);
  const portions = lots.flatMap((lot) => resolveComposition(lot, graph));
  return portions.flatMap(({ source, fraction }) => (source !== null && fraction >= NOTICED ? [source] : []));
};
