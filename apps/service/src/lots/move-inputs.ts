import { CorrectionEntity } from '../platform/facts/correction.entity.js';
import type { Fact } from '../platform/facts/fact.js';
import { insertVersion } from '../platform/facts/new-version.js';
import { standing } from '../platform/facts/standing.js';
import { childId } from '../platform/ids.js';
import { drawAgain } from '../platform/lots/draw.js';
import type { DrawnFrom } from '../platform/lots/drawn-row.js';
import { forgetUnidentified } from '../platform/lots/forget-unidentified.js';
import { splitAgain } from '../platform/lots/split-again.js';
import { LotInputEntity } from '../platform/lots/lot-input.entity.js';
import type { LotEntity } from '../platform/lots/lot.entity.js';

type Input = DrawnFrom & Record<'id' | 'quantity' | 'unit' | 'basis', string> & { readonly kg: number };

const INPUTS = `
  select i.id, i.tank_id as "tankId", i.gun_id as "gunId", i.feed, i.quantity::text, i.unit, i.basis, i.kg
  from fact.lot_input i where i.lot_id = $1 and i.happened_at <> $2 and ${standing('i')} order by i.id`;

/**
 * What a lot is made of went into it when it was made: when that is corrected its inputs move with it, and what was
 * drawn from a tank or gun is of what it held or what fed it then.
 */
export const moveInputs = async (fact: Fact, { root, code }: LotEntity, at: Date): Promise<void> => {
  const guns: string[] = [];
  for (const { id, ...input } of await fact.tx.query<Input[]>(INPUTS, [root, at])) {
    const { quantity, unit, basis, kg } = input;
    const amount = { quantity, unit, basis } as Parameters<typeof drawAgain>[2]['amount'];
    if (input.gunId !== null) guns.push(input.gunId);
    const taken = await drawAgain(fact, input, { amount, at, kg, pointer: `/set/happenedAt/${id}` });
    const replacement = childId(fact.id, `moves with its lot/${id}`);
    const reason = `Lot ${code} was made at another time.`;
    await fact.insert(CorrectionEntity, { corrects: id, correctsTable: 'lot_input', replacement, reason });
    const drawn = taken ? { inputId: taken.lot.id, ...taken.drawn } : {};
    await insertVersion(fact, LotInputEntity, id, replacement, { happenedAt: at, ...drawn });
    await forgetUnidentified(fact, 'lot_input', id, reason);
  }
  for (const gun of new Set(guns)) await splitAgain(fact, gun, `Lot ${code} was made at another time.`);
};
