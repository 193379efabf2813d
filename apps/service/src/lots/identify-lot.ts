import { Injectable } from '@nestjs/common';
import type { IdentifyLot as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { findLots, type FoundLot } from '../platform/lots/find-lots.js';
import { redraw, type DrawnTable } from '../platform/lots/redraw.js';
import { NotThere, Unprocessable } from '../platform/refusals.js';

/** Says which lot unidentified material was: all that was drawn of it is corrected to have been drawn of that lot. */
@Injectable()
export class IdentifyLot {
  constructor(private readonly record: RecordFact) {}

  run(lot: string, request: Request): Promise<Receipt<{ draws: number }>> {
    const decide = async (fact: Fact): Promise<{ draws: number }> => {
      const unidentified = await find(fact, lot);
      const known = await find(fact, request.as, '/as');
      if (unidentified.origin !== 'unidentified')
        throw new Unprocessable(
          'lot-is-identified',
          `Lot ${lot} is not unidentified: correct what was used instead.`,
          '',
        );
      if (known.origin === 'unidentified')
        throw new Unprocessable(
          'lot-is-unidentified',
          `Lot ${request.as} is unidentified itself: name the real lot.`,
          '/as',
        );
      const draws = [
        ...(await drawsOf(fact, 'used', 'lot_id', unidentified.id)),
        ...(await drawsOf(fact, 'lot_input', 'input_id', unidentified.id)),
      ];
      for (const { table, id } of draws) await redraw(fact, table, { id, lot: known.id }, request.reason);
      return { draws: draws.length };
    };
    return this.record.run('material identified', { ...request, lot }, decide, { genealogy: 'alone' });
  }
}

const find = async (fact: Fact, name: string, pointer?: string): Promise<FoundLot> => {
  const found = (await findLots(fact.tx, fact.author.plantId, [name], fact.happenedAt)).get(name);
  if (!found) throw new NotThere('lot', name, pointer);
  return found;
};

const drawsOf = async (
  fact: Fact,
  table: DrawnTable,
  column: 'lot_id' | 'input_id',
  lot: string,
): Promise<readonly { readonly table: DrawnTable; readonly id: string }[]> => {
  const rows = await fact.tx.query<{ id: string }[]>(
    `select d.id from fact.${table} d where d.${column} = $1 and ${standing('d')} order by d.id`,
    [lot],
  );
  return rows.map(({ id }) => ({ table, id }));
};
