import type { EntityManager } from 'typeorm';
import type { Obstacle } from '@hull-record/contracts';
import { isDisposed, type HullDisposition } from '@hull-record/trade';
import { standing } from '../facts/standing.js';
import { boundedHolds, type FoundHold } from './find-hold.js';
import { reachOfHold } from './reach-of-hold.js';
import { wordThing } from './word-thing.js';

/** The obstacle that a lot on hold is; its `about` is the hold. */
const OF_LOT = 'lot-on-hold';

interface Said {
  readonly hold_id: string;
  readonly what: HullDisposition;
}

const SAID = `
  select distinct on (d.hold_id) d.hold_id, d.what from fact.hold_disposition d
  where d.hull_id = $1 and ${standing('d')} order by d.hold_id, d.happened_at desc, d.recorded_at desc, d.id desc`;

/**
 * What holds leave in the way of a hull: those of its lots, less those that were narrowed away from it and those under
 * which it is disposed of; those on equipment, molds and periods that reach it; and those it came to after they were closed.
 *
 * @param found obstacles so far, with one for each hold on a lot in the hull
 */
export const withHoldsInTheWay = async (
  tx: EntityManager,
  hullId: string,
  lots: readonly string[],
  found: readonly Obstacle[],
): Promise<readonly Obstacle[]> => {
  const [hull] = await tx.query<{ plant_id: string }[]>('select h.plant_id from fact.hull h where h.id = $1', [hullId]);
  if (!hull) return found;
  const said = new Map((await tx.query<Said[]>(SAID, [hullId])).map(({ hold_id, what }) => [hold_id, what]));
  const isSettled = (hold: string): boolean => isDisposed(null, said.get(hold) ?? null);
  const away = new Set<string>();
  const more: Obstacle[] = [];
  for (const hold of await boundedHolds(tx, hull.plant_id, lots)) {
    if (isSettled(hold.id)) continue;
    const [owner] = await reachOfHold(tx, hold, hold.scope, hullId);
    if ((hold.lotId === null || hold.closed) && owner?.reached) more.push(await wordObstacle(tx, hold));
    if (hold.lotId !== null && !owner?.reached) away.add(hold.id);
  }
  const stays = ({ rule, about }: Obstacle): boolean =>
    rule !== OF_LOT || about === null || !(isSettled(about) || away.has(about));
  return [...found.filter(stays), ...more];
};

const wordObstacle = async (tx: EntityManager, hold: FoundHold): Promise<Obstacle> => ({
  ...{ rule: 'hull-on-hold', part: null, layer: null, about: hold.id },
  detail: hold.closed
    ? `The hull came to the hold on ${await wordThing(tx, hold.id)} (${hold.kind}: ${hold.reason.replace(/\.$/, '')}) after it was closed: say under that hold what was found or done of it.`
    : `${await wordThing(tx, hold.id)} is on hold (${hold.kind}): ${hold.reason.replace(/\.$/, '')}. The hull waits until it is disposed of under the hold.`,
});
