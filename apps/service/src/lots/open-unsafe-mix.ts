import { resolveComposition } from '@hull-record/genealogy';
import { meetsWithoutResin, NEVER_MIX, promoterComesFirst, type MaterialRole } from '@hull-record/trade';
import { loadUpstream } from '../platform/composition/load-upstream.js';
import type { Fact } from '../platform/facts/fact.js';
import { HoldEntity, ON_NOTHING } from '../platform/store/hold.entity.js';
import type { ResolvedTaken } from '../platform/lots/resolved-taken.js';

/**
 * Opens a nonconformity when catalyst and promoter met without resin, whatever lots they came in: it is a stop that
 * nothing lifts, and when it happened it is recorded, with the caution, and what was made is on safety hold from then on.
 * Warns when the promoter did not go in first.
 */
export const openUnsafeMix = async (fact: Fact, inputs: readonly ResolvedTaken[]): Promise<void> => {
  const graph = await loadUpstream(fact.tx, [...new Set(inputs.map(({ lot }) => lot.id))]);
  const added = inputs.map(({ lot }) => resolveComposition(lot.id, graph).map(({ role }) => role as MaterialRole));
  if (!promoterComesFirst(added.flat()))
    fact.warn('Promoter is stirred into the resin first, and catalyst goes in last.');
  if (!meetsWithoutResin(added)) return;
  const detail = `Catalyst and promoter came together without resin. ${NEVER_MIX}`;
  await fact.open({ rule: 'catalyst-meets-promoter', detail, aboutKind: 'lot', aboutId: fact.id, partId: null });
  await fact.insert(HoldEntity, { ...ON_NOTHING, lotId: fact.id, kind: 'safety', reason: detail });
};
