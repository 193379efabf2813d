import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { drawAgain } from './draw.js';
import type { DrawnFrom } from './drawn-row.js';
import { hookUpAt, lotInTankAt } from './in-tank.sql.js';
import { redraw, type DrawnTable } from './redraw.js';

/**
 * Draws whose lot is not what the tank held, or fed the gun, when they happened. A draw of unidentified material stays
 * while nothing else is known; but when the gun turns out to have been fed from a tank, or not, it is of that tank then,
 * and follows its fills.
 */
const moved = (table: DrawnTable, lot: 'lot_id' | 'input_id', of: 'tank_id' | 'gun_id'): string => `
  select d.id, d.happened_at, d.tank_id as "tankId", d.gun_id as "gunId", d.feed, d.quantity::text, d.unit, d.basis, d.kg
  from fact.${table} d
  left join lateral ${hookUpAt('d.gun_id', 'd.feed', 'd.happened_at')} fed on true
  cross join lateral (select case when d.gun_id is null then d.tank_id else fed.tank_id end as tank) from_tank
  cross join lateral (select coalesce(fed.lot_id, ${lotInTankAt('from_tank.tank', 'd.happened_at')}) as lot) held
  join fact.lot was on was.id = d.${lot}
  where d.${of} = $1 and ${standing('d')} and held.lot is distinct from d.${lot}
    and not (held.lot is null and was.origin = 'unidentified' and d.tank_id is not distinct from from_tank.tank)
  order by d.happened_at, d.id`;

type Moved = DrawnFrom &
  Record<'id' | 'quantity' | 'unit' | 'basis', string> & { readonly happened_at: Date; readonly kg: number };

/** Sees that everything drawn from a tank or gun is of the lot that it held, or that fed it, then; corrects what is not. */
export const followDraws = async (fact: Fact, of: 'tank_id' | 'gun_id', id: string, reason: string): Promise<void> => {
  for (const table of ['used', 'lot_input'] as const) {
    const draws = await fact.tx.query<Moved[]>(moved(table, table === 'used' ? 'lot_id' : 'input_id', of), [id]);
    for (const draw of draws) {
      const { quantity, unit, basis, kg, happened_at: at } = draw;
      const amount = { quantity, unit, basis } as Parameters<typeof drawAgain>[2]['amount'];
      const taken = await drawAgain(fact, draw, { amount, at, kg, pointer: `/${draw.id}` });
      if (taken) await redraw(fact, table, { id: draw.id, lot: taken.lot.id, ...taken.drawn }, reason);
    }
  }
};
