import type { EntityManager } from 'typeorm';
import type { ContainerView } from '@hull-record/contracts';
import { resolveComposition } from '@hull-record/genealogy';
import { loadUpstream } from '../../../platform/composition/load-upstream.js';
import { askReach, readReach, type ReachRow } from '../../../platform/reach/ask-reach.js';
import { recomputingDownstream, recomputingLot } from '../../../platform/recompute/recomputing.js';
import { CONTAINERS } from '../../../platform/store/containers.sql.js';
import { loadBalance } from '../../../platform/store/load-balance.js';
import { loadReadings, NOW } from '../../../platform/views/making.js';
import { loadVerdicts } from '../../../platform/views/verdicts.js';
import { loadDispositions } from '../../load-judgements.js';
import { plantOf } from '../../../platform/papers/plant-of.js';
import {
  loadLot,
  loadHoldsOfLot,
  loadLotEvents,
  loadLotNonconformities,
  loadLotsMade,
  loadSources,
  loadUnidentified,
} from './load-lot.js';
import { loadNewestOfLot } from '../../../platform/papers/newest-of-lot.js';

/** Everything that the report of a lot words, as rows. */
export type LotFacts = Awaited<ReturnType<typeof loadLotFacts>>;

/** Hulls that are read at once. */
const AT_ONCE = 1_000;

/**
 * Loads everything recorded of a lot, what it is made of and where it went.
 *
 * @param name code or id of the lot
 * @param tx one transaction that sees one moment
 * @throws NotThere
 */
export const loadLotFacts = async (tx: EntityManager, name: string) => {
  const lot = await loadLot(tx, name);
  const portions = resolveComposition(lot.id, await loadUpstream(tx, [lot.id]));
  const readings = await loadReadings(tx, [lot.id], NOW);
  const nonconformities = await loadLotNonconformities(tx, lot.id);
  const about = [...readings.map(({ root }) => root), ...nonconformities.map(({ id }) => id)];
  return {
    ...{ lot, readings, nonconformities, plant: await plantOf(tx, 'lot', lot.version) },
    made: lot.origin !== 'received' && lot.origin !== 'unidentified',
    composition: await loadSources(tx, portions),
    events: await loadLotEvents(tx, lot.id),
    holds: await loadHoldsOfLot(tx, lot.id),
    containers: await tx.query<ContainerView[]>(CONTAINERS('c.lot_id = $1'), [lot.id]),
    verdicts: await loadVerdicts(tx, [lot.id], NOW),
    dispositions: await loadDispositions(tx, about, NOW),
    reach: await allReached(tx, lot.id),
    unidentified: await loadUnidentified(tx, lot.id),
    lotsMade: await loadLotsMade(tx, lot.id),
    balance: await loadBalance(tx, lot.id),
    recomputing: (await recomputingDownstream(tx, lot.id)) ?? (await recomputingLot(tx, lot.id)),
    newest: await loadNewestOfLot(tx, lot.id),
  };
};

/** All hulls that hold some of it, however little, and those that possibly do, in the order of their numbers. */
const allReached = async (tx: EntityManager, lotId: string): Promise<readonly ReachRow[]> => {
  const asked = await askReach(tx, lotId, { minShare: 0, belowFloor: 'members only' });
  const rows: ReachRow[] = [];
  for (let after: string | null = null; ;) {
    const page = await readReach(tx, asked, after, AT_ONCE);
    rows.push(...page.items);
    if (page.next === null) return rows;
    after = page.items.at(-1)?.key ?? null;
  }
};
