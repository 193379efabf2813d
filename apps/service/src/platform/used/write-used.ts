import type { Taken } from '@hull-record/contracts';
import type { Fact } from '../facts/fact.js';
import { NOT_SPRAYED } from '../lots/drawn-row.js';
import { brokenLotRules } from '../lots/break-of-lot-rules.js';
import type { ResolvedTaken } from '../lots/resolved-taken.js';
import { resolveTaken } from '../lots/resolve-taken.js';
import type { PlaceKind } from '../places/places.js';
import { warnOfStock } from '../store/stock-warnings.js';
import { UsedEntity } from './used.entity.js';

/** The layer, joint or repair that something is used in. */
export interface UsedInto {
  readonly kind: PlaceKind | 'mold care';
  readonly id: string;
  /** null: of no part, as the care of a mold. */
  readonly partId: string | null;
}

/**
 * Keeps what was used in a layer, joint or repair. A lot that was expired, held or not released is kept as used, and a
 * nonconformity is opened: what happened is never refused for breaking a rule.
 *
 * @param at when it was taken: of a layer, when the layer was made, whenever it is entered
 * @returns what was taken, in the order given
 */
export const writeUsed = async (
  fact: Fact,
  into: UsedInto,
  used: readonly Taken[],
  at: Date = fact.happenedAt,
  pointer: (i: number) => string = (i) => `/used/${i}`,
): Promise<readonly ResolvedTaken[]> => {
  const taken = await resolveTaken(fact, used, pointer, at);
  await fact.insertMany(
    UsedEntity,
    taken.map(({ lot, drawn, amount, spray }) => ({
      lotId: lot.id,
      ...drawn,
      ...(spray ?? NOT_SPRAYED),
      intoKind: into.kind,
      intoId: into.id,
      happenedAt: at,
      ...amount,
    })),
  );
  for (const { lot } of taken) {
    for (const broken of brokenLotRules(lot)) {
      await fact.open({ ...broken, aboutKind: into.kind, aboutId: into.id, partId: into.partId });
    }
  }
  await warnOfStock(fact, taken, at);
  return taken;
};

/** Kilograms of all that was taken. */
export const totalKg = (taken: readonly ResolvedTaken[]): number =>
  taken.reduce((sum, { amount }) => sum + amount.kg, 0);
