import type { Fact } from '../facts/fact.js';
import { CorrectionEntity } from '../facts/correction.entity.js';
import { insertVersion } from '../facts/new-version.js';
import { standing } from '../facts/standing.js';
import { childId } from '../ids.js';
import { Conflict } from '../refusals.js';
import { UsedEntity } from './used.entity.js';

const MOVED = `
  select u.id, u.happened_at, l.root as lot from fact.used u
  left join lateral (
    select l.root from fact.lot l where l.tank_id = u.tank_id and l.happened_at <= u.happened_at and ${standing('l')}
    order by l.happened_at desc, l.fill_number desc limit 1) l on true
  where u.tank_id = $1 and ${standing('u')} and l.root is distinct from u.lot_id order by u.happened_at, u.id`;

interface Moved {
  readonly id: string;
  readonly happened_at: Date;
  readonly lot: string | null;
}

/**
 * Sees that everything drawn from a tank is of the lot that was in it when it was drawn, after a fill was recorded late
 * or its time was corrected: each use of another lot is corrected.
 *
 * @param pointer field of the request that moved a fill
 * @throws Conflict `tank-was-empty` when something would have been drawn before the first fill
 */
export const followTank = async (fact: Fact, tankId: string, reason: string, pointer: string): Promise<void> => {
  const moved = await fact.tx.query<Moved[]>(MOVED, [tankId]);
  for (const { id, happened_at, lot } of moved) {
    if (lot === null) throw drawnBefore(happened_at, pointer);
    const replacement = childId(fact.id, `follows the tank/${id}`);
    await fact.insert(CorrectionEntity, { corrects: id, correctsTable: 'used', replacement, reason });
    await insertVersion(fact, UsedEntity, id, replacement, { lotId: lot });
  }
};

const drawnBefore = (at: Date, pointer: string): Conflict =>
  new Conflict(
    'tank-was-empty',
    `Something was drawn from the tank at ${at.toISOString()}, when it would have been empty: correct that first.`,
    pointer,
  );
