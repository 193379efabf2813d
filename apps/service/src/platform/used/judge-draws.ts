import type { EntityManager } from 'typeorm';
import type { About } from '../facts/open-newly-broken.js';
import { readScheduleLayers } from '../layers/find-schedule-layer.js';
import { foreignMaterialsOf } from '../layers/foreign-materials.js';
import { brokenLotRules, type BrokenRule } from '../lots/break-of-lot-rules.js';
import { findLotsAsked } from '../lots/find-lots.js';
import type { Draw } from './draws.sql.js';

/** A rule that something drawn broke. */
export type JudgedDraw = BrokenRule & About;

/** Judges draws by what is known now of their lots, each as it stood when it was drawn: many in a few statements. */
export const judgeDraws = async (
  tx: EntityManager,
  plantId: string,
  draws: readonly Draw[],
): Promise<readonly JudgedDraw[]> => {
  if (draws.length === 0) return [];
  const lots = await findLotsAsked(
    tx,
    plantId,
    draws.map(({ lot, container, at }) => ({ name: lot, container, at })),
  );
  const layers = await readScheduleLayers(tx, [...new Set(draws.flatMap(({ layer }) => layer ?? []))]);
  const foreign = await foreignMaterialsOf(
    tx,
    draws.map(({ lot, layer }) => ({ lots: [lot], layer: layers.get(layer ?? '') })),
  );
  return draws.flatMap(({ aboutKind, aboutId, partId }, i) => {
    const found = lots[i];
    const broken = found ? [...brokenLotRules(found), ...(foreign[i] ?? [])] : [];
    return broken.map((rule) => ({ ...rule, aboutKind, aboutId, partId }));
  });
};
