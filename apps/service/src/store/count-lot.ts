import { Injectable } from '@nestjs/common';
import type { CountLot as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { measuredDifferenceKg } from '../platform/lots/book-kg.js';
import { kilogramsOf } from '../platform/lots/known-amount.js';
import { findLotOrContainer, type OfLot } from '../platform/store/find-lot-or-container.js';
import { LotCountEntity } from './lot-facts.entity.js';

/** Records what was really there of a lot. The answer says by how much the book was off. */
@Injectable()
export class CountLot {
  constructor(private readonly record: RecordFact) {}

  run(lot: string, request: Request): Promise<Receipt<{ kg: number; differenceKg: number | null }>> {
    return this.record.run('lot counted', { ...request, lot }, async (fact) => {
      const of = await findLotOrContainer(fact, lot, request.container);
      const { quantity, unit, note = null } = request;
      const kg = kilogramsCounted(quantity, unit, of);
      await fact.insert(LotCountEntity, { lotId: of.lot.id, containerId: of.containerId, quantity, unit, kg, note });
      return { kg, differenceKg: of.containerId === null ? await differenceOf(fact, of.lot.id) : null };
    });
  }
}

/** Nothing is nothing in any unit; anything else is made kilograms as what was taken is. */
const kilogramsCounted = (quantity: string, unit: Request['unit'], { lot }: OfLot): number =>
  Number(quantity) === 0 ? 0 : kilogramsOf({ quantity, unit, basis: 'weighed' }, lot, '').kg;

const differenceOf = async (fact: Fact, lotId: string): Promise<number | null> => {
  const [row] = await fact.tx.query<[{ kg: number | null }]>(`select ${measuredDifferenceKg('$1::uuid')} as kg`, [
    lotId,
  ]);
  return row.kg;
};
