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

/** Materials of these received lots, but for those that no schedule names: what is only mixed in. */
const MATERIALS = `
  select l.root as source, l.code as lot, m.name as material, m.code from fact.lot l
  join fact.material m on m.root = l.material_id and ${standing('m')}
  where l.root = any($1) and ${standing('l')} and m.role not in ('catalyst', 'promoter', 'inhibitor', 'pigment', 'release')
  order by l.code, m.name`;

interface OfLot {
  readonly source: string;
  readonly lot: string;
  readonly material: string;
  readonly code: string;
}

/** Lots that were used in a layer; no layer: nothing is foreign there. */
export interface UsedInLayer {
  readonly lots: readonly string[];
  readonly layer: FoundLayer | undefined;
}

/** A material that the schedule does not allow in this layer is kept as used, and said. */
export const foreignMaterials = async (
  tx: EntityManager,
  layer: FoundLayer,
  lots: readonly string[],
): Promise<readonly BrokenRule[]> => (await foreignMaterialsOf(tx, [{ lots, layer }]))[0] ?? [];

/** The same for many layers, in the order asked. */
export const foreignMaterialsOf = async (
  tx: EntityManager,
  asked: readonly UsedInLayer[],
): Promise<readonly (readonly BrokenRule[])[]> => {
  const all = [...new Set(asked.flatMap(({ lots, layer }) => (layer ? lots : [])))];
  if (all.length === 0) return asked.map(() => []);
  const sources = await noticedSources(tx, all);
  const materials = await tx.query<OfLot[]>(MATERIALS, [[...new Set([...sources.values()].flat())]]);
  return asked.map(({ lots, layer }) => {
    if (!layer) return [];
    const noticed = new Set(lots.flatMap((lot) => sources.get(lot) ?? []));
    const allowed = new Set(layer.materials.map(({ material }) => material));
    return materials
      .filter(({ source, code }) => noticed.has(source) && !allowed.has(code))
      .map(({ lot, material }) => ({
        rule: 'material-not-in-schedule',
        detail: `${material} (lot ${lot}) is not a material of layer ${layer.name}.`,
      }));
  });
};

const noticedSources = async (
  tx: EntityManager,
  lots: readonly string[],
): Promise<ReadonlyMap<string, readonly string[]>> => {
  const graph = await loadUpstream(tx, lots);
  return new Map(
    lots.map((lot) => [
      lot,
      resolveComposition(lot, graph).flatMap(({ source, fraction }) =>
        source !== null && fraction >= NOTICED ? [source] : [],
      ),
    ]),
  );
};
