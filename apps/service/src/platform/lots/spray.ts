import type { Taken } from '@hull-record/contracts';
import { dimensionOf, splitByCatalyst, type UnitCode } from '@hull-record/trade';
import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { holdsOnEquipment } from '../holds/warn-of-holds.js';
import { childId } from '../ids.js';
import { NotThere, Unprocessable } from '../refusals.js';
import { drawFromGun } from './draw.js';
import type { ResolvedTaken } from './resolved-taken.js';

/** SQL: per cent of catalyst that a gun was set to at an instant; null before any setting on record. */
export const settingAt = (gun: string, at: string): string => `(
  select s.catalyst_percent from fact.gun_setting s where s.gun_id = ${gun} and s.happened_at <= ${at} and ${standing('s')}
  order by s.happened_at desc, s.recorded_at desc, s.id limit 1)`;

const GUN = `
  select e.root as id, ${settingAt('e.root', '$3')} as percent
  from fact.equipment e where e.plant_id = $1 and e.code = $2 and e.kind = 'gun' and ${standing('e')}`;

/**
 * Finds what a gun sprayed. Of one feed, when it is named; otherwise the amount is resin and the catalyst that the gun
 * added to it by its setting then. Without a setting on record it is all resin, and nothing is known of catalyst.
 *
 * @throws NotThere, Unprocessable `mass-of-a-spray` when resin and catalyst together are not given as a mass
 */
export const spray = async (fact: Fact, entry: Taken, at: Date, pointer: string): Promise<readonly ResolvedTaken[]> => {
  const gun = entry.gun as string;
  const [found] = await fact.tx.query<{ id: string; percent: number | null }[]>(GUN, [fact.author.plantId, gun, at]);
  if (!found) throw new NotThere('gun', gun, `${pointer}/gun`);
  for (const says of await holdsOnEquipment(fact, found.id, at)) fact.warn(says);
  const { amount } = entry;
  if (entry.feed !== undefined) return [await drawFromGun(fact, found.id, entry.feed, { amount, at, pointer })];
  const spray = { sprayId: childId(fact.id, `spray/${pointer}`), sprayed: amount.quantity };
  if (found.percent === null || found.percent === 0) {
    const resin = await drawFromGun(fact, found.id, 'resin', { amount, at, pointer });
    // A setting that is entered late can split a mass alone.
    return [dimensionOf(amount.unit) === 'mass' ? { ...resin, spray } : resin];
  }
  assertMass(amount.unit, pointer);
  const split = splitByCatalyst(amount.quantity, found.percent);
  const of = async (feed: 'resin' | 'catalyst', quantity: string): Promise<ResolvedTaken> => ({
    ...(await drawFromGun(fact, found.id, feed, {
      amount: { ...amount, quantity },
      at,
      pointer: `${pointer}/${feed}`,
    })),
    spray,
  });
  return [await of('resin', split.resin), await of('catalyst', split.catalyst)];
};

const assertMass = (unit: UnitCode, pointer: string): void => {
  if (dimensionOf(unit) === 'mass') return;
  throw new Unprocessable(
    'mass-of-a-spray',
    'Resin and catalyst together are given as a mass: give kilograms, or name the feed and its own amount.',
    `${pointer}/amount/unit`,
  );
};
