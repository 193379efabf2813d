import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { beforeAnyFill, drawFromTank } from './draw.js';
import { followDraws } from './follow-draws.js';
import { redraw } from './redraw.js';

/**
 * Heels of tank `$1` that are not of the fill before in time: of another fill of the tank, or of nobody knows what while
 * there was no fill before.
 */
const HEELS = `
  with fills as (
    select l.root, l.happened_at, lag(l.root) over (order by l.happened_at, l.fill_number) as before
    from fact.lot l where l.tank_id = $1 and ${standing('l')})
  select i.id, f.happened_at, f.before, i.quantity::text, i.unit, i.basis, i.kg
  from fills f
  join fact.lot_input i on i.lot_id = f.root and i.tank_id is null and i.gun_id is null and ${standing('i')}
  join fact.lot heel on heel.id = i.input_id
  where i.input_id is distinct from f.before
    and (heel.tank_id = $1 or (f.before is not null and heel.origin = 'unidentified' and heel.looks = (
      select '${beforeAnyFill("' || t.code || '")}' from fact.tank t where t.id = $1)))
  order by f.happened_at`;

interface Heel {
  readonly id: string;
  readonly happened_at: Date;
  readonly before: string | null;
  readonly quantity: string;
  readonly unit: string;
  readonly basis: string;
  readonly kg: number;
}

/**
 * Sees that a tank tells one story after a fill was recorded late, moved in time or withdrawn: the heel in each fill is
 * of the fill before it, and what was drawn is of the lot that was in it then. What is not is corrected.
 */
export const followTank = async (fact: Fact, tankId: string, reason: string): Promise<void> => {
  for (const { id, happened_at, before, kg, ...entered } of await fact.tx.query<Heel[]>(HEELS, [tankId])) {
    const amount = entered as Parameters<typeof drawFromTank>[2]['amount'];
    const just = new Date(happened_at.getTime() - 1);
    const lot = before ?? (await drawFromTank(fact, tankId, { amount, at: just, kg, pointer: `/${id}` })).lot.id;
    await redraw(fact, 'lot_input', { id, lot }, reason);
  }
  await followDraws(fact, 'tank_id', tankId, reason);
};
