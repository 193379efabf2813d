import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { Conflict } from '../refusals.js';
import { redraw } from './redraw.js';

/** Draws of tank `$1` that name another lot than the one that was in it when they happened. */
const moved = (table: 'used' | 'lot_input', column: 'lot_id' | 'input_id'): string => `
  select d.id, d.happened_at, l.root as lot from fact.${table} d
  left join lateral (
    select l.root from fact.lot l where l.tank_id = d.tank_id and l.happened_at <= d.happened_at and ${standing('l')}
    order by l.happened_at desc, l.fill_number desc limit 1) l on true
  where d.tank_id = $1 and ${standing('d')} and l.root is distinct from d.${column} order by d.happened_at, d.id`;

interface Moved {
  readonly id: string;
  readonly happened_at: Date;
  readonly lot: string | null;
}

/**
 * Sees that everything drawn from a tank, to be used or mixed, is of the lot that was in it when it was drawn, after a
 * fill was recorded late or its time was corrected: each draw of another lot is corrected.
 *
 * @param pointer field of the request that moved a fill
 * @throws Conflict `tank-was-empty` when something would have been drawn before the first fill
 */
export const followTank = async (fact: Fact, tankId: string, reason: string, pointer: string): Promise<void> => {
  for (const table of ['used', 'lot_input'] as const) {
    const draws = await fact.tx.query<Moved[]>(moved(table, table === 'used' ? 'lot_id' : 'input_id'), [tankId]);
    for (const { id, happened_at, lot } of draws) {
      if (lot === null) throw drawnBefore(happened_at, pointer);
      await redraw(fact, table, { id, lot }, reason);
    }
  }
};

const drawnBefore = (at: Date, pointer: string): Conflict =>
  new Conflict(
    'tank-was-empty',
    `Something was drawn from the tank at ${at.toISOString()}, when it would have been empty: correct that first.`,
    pointer,
  );
