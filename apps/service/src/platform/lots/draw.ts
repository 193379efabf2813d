import type { Amount } from '@hull-record/contracts';
import type { MaterialRole } from '@hull-record/trade';
import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { NotThere } from '../refusals.js';
import { FROM_THE_LOT, type DrawnFrom, type Feed } from './drawn-row.js';
import { findLots, type FoundLot } from './find-lots.js';
import { hookUpAt, lotInTankAt } from './in-tank.sql.js';
import { kilogramsOf, type KnownAmount } from './known-amount.js';
import { makeUnidentified } from './make-unidentified.js';
import type { ResolvedTaken } from './resolved-taken.js';

/** When something was drawn, and the field of the request that says so. */
export interface Drawing {
  readonly amount: Amount;
  readonly at: Date;
  readonly pointer: string;
  /** Of what is recorded already, as of which lot it is drawn is found anew: its kilograms stay. */
  readonly kg?: number;
}

/** What is said of material from a tank that nobody recorded a fill of by then. */
export const beforeAnyFill = (tank: string): string => `drawn from tank ${tank}, before any fill on record`;

interface Tank {
  readonly id: string;
  readonly code: string;
  readonly lot: string | null;
  readonly role: MaterialRole;
  readonly density: number | null;
}

const TANK = `
  select t.root as id, t.code, ${lotInTankAt('t.root', '$3')}::text as lot, m.role, m.density_kg_per_l as density
  from fact.tank t join fact.material m on m.root = t.material_id and ${standing('m')}
  where t.plant_id = $1 and (t.code = $2 or t.root::text = $2) and ${standing('t')}`;

/**
 * Draws from a tank, named by code or id: the lot that was in it at that time.
 *
 * Before its first fill on record nobody knows what was in it: unidentified, until a fill is recorded late.
 *
 * @throws NotThere for an unknown tank, Unprocessable `unit-without-conversion`
 */
export const drawFromTank = async (fact: Fact, tank: string, drawing: Drawing): Promise<ResolvedTaken> => {
  const { at, pointer } = drawing;
  const [found] = await fact.tx.query<Tank[]>(TANK, [fact.author.plantId, tank, at]);
  if (!found) throw new NotThere('tank', tank, `${pointer}/tank`);
  const drawn = { ...FROM_THE_LOT, tankId: found.id };
  if (found.lot !== null) return drawLot(fact, found.lot, drawn, drawing);
  const known = weigh(drawing, {
    code: `tank ${found.code}`,
    ...(found.density === null ? {} : { densityKgPerL: found.density }),
  });
  const unidentified = {
    role: found.role,
    looks: beforeAnyFill(found.code),
    likely: [],
  };
  return { lot: await makeUnidentified(fact, unidentified, known, at, pointer), drawn, amount: known };
};

/**
 * Draws what fed a gun at that time. What nobody recorded as hooked up is unidentified, until a hook-up is recorded late.
 *
 * @param gun its id
 */
export const drawFromGun = async (fact: Fact, gun: string, feed: Feed, drawing: Drawing): Promise<ResolvedTaken> => {
  const { at, pointer } = drawing;
  const from = { ...FROM_THE_LOT, gunId: gun, feed };
  const [fed] = await fact.tx.query<{ lot_id: string | null; tank_id: string | null }[]>(hookUpAt('$1', '$2', '$3'), [
    gun,
    feed,
    at,
  ]);
  if (fed && fed.lot_id !== null) return drawLot(fact, fed.lot_id, from, drawing);
  if (fed && fed.tank_id !== null) {
    const { drawn, ...taken } = await drawFromTank(fact, fed.tank_id, drawing);
    return { ...taken, drawn: { ...from, tankId: drawn.tankId } };
  }
  const known = weigh(drawing, { code: `the ${feed} of the gun` });
  const unidentified = { role: feed, looks: `sprayed while no ${feed} was hooked up to the gun on record`, likely: [] };
  return { lot: await makeUnidentified(fact, unidentified, known, at, pointer), drawn: from, amount: known };
};

/** Draws again, at another time, what was drawn from a tank or gun; undefined when a lot itself was named. */
export const drawAgain = async (
  fact: Fact,
  { tankId, gunId, feed }: DrawnFrom,
  drawing: Drawing,
): Promise<ResolvedTaken | undefined> => {
  if (gunId !== null && feed !== null) return drawFromGun(fact, gunId, feed, drawing);
  return tankId === null ? undefined : drawFromTank(fact, tankId, drawing);
};

const drawLot = async (fact: Fact, id: string, drawn: DrawnFrom, drawing: Drawing): Promise<ResolvedTaken> => {
  const lots = await findLots(fact.tx, fact.author.plantId, [id], drawing.at);
  const lot = lots.get(id) as FoundLot;
  return { lot, drawn, amount: weigh(drawing, lot) };
};

const weigh = ({ amount, kg, pointer }: Drawing, of: Parameters<typeof kilogramsOf>[1]): KnownAmount =>
  kg === undefined ? kilogramsOf(amount, of, `${pointer}/amount`) : { ...amount, kg };
