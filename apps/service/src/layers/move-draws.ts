import { CorrectionEntity } from '../platform/facts/correction.entity.js';
import type { Fact } from '../platform/facts/fact.js';
import { insertVersion } from '../platform/facts/new-version.js';
import { standing } from '../platform/facts/standing.js';
import { childId } from '../platform/ids.js';
import { drawAgain } from '../platform/lots/draw.js';
import type { DrawnFrom } from '../platform/lots/drawn-row.js';
import { forgetUnidentified } from '../platform/lots/forget-unidentified.js';
import { splitAgain } from '../platform/lots/split-again.js';
import { UsedEntity } from '../platform/used/used.entity.js';
import type { LayerRecordEntity } from './layer-record.entity.js';

type Times = Pick<LayerRecordEntity, 'startedAt' | 'endedAt'>;

type Draw = DrawnFrom & Record<'id' | 'quantity' | 'unit' | 'basis', string> & { readonly kg: number };

const OUTSIDE = `
  select u.id, u.tank_id as "tankId", u.gun_id as "gunId", u.feed, u.quantity::text, u.unit, u.basis, u.kg from fact.used u
  where u.into_id = $1 and (u.happened_at < $2 or u.happened_at > $3) and ${standing('u')} order by u.id`;

/**
 * What was used in a layer was used while the layer was made: when its times are corrected, uses outside them move to
 * its end, and what was drawn from a tank or gun is of what it held or what fed it then.
 */
export const moveDraws = async (fact: Fact, old: LayerRecordEntity, { startedAt, endedAt }: Times): Promise<void> => {
  if (startedAt.getTime() === old.startedAt.getTime() && endedAt.getTime() === old.endedAt.getTime()) return;
  const guns: string[] = [];
  for (const { id, ...draw } of await fact.tx.query<Draw[]>(OUTSIDE, [old.root, startedAt, endedAt])) {
    const { quantity, unit, basis, kg } = draw;
    const amount = { quantity, unit, basis } as Parameters<typeof drawAgain>[2]['amount'];
    if (draw.gunId !== null) guns.push(draw.gunId);
    const taken = await drawAgain(fact, draw, { amount, at: endedAt, kg, pointer: `/set/endedAt/${id}` });
    const replacement = childId(fact.id, `moves with its layer/${id}`);
    const reason = 'The layer was made at another time.';
    await fact.insert(CorrectionEntity, { corrects: id, correctsTable: 'used', replacement, reason });
    const drawn = taken ? { lotId: taken.lot.id, ...taken.drawn } : {};
    await insertVersion(fact, UsedEntity, id, replacement, { happenedAt: endedAt, ...drawn });
    await forgetUnidentified(fact, 'used', id, reason);
  }
  for (const gun of new Set(guns)) await splitAgain(fact, gun, 'The layer was made at another time.');
};
