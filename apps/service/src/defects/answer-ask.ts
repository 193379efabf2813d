import { Injectable } from '@nestjs/common';
import type { AnswerAsk as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { findLots } from '../platform/lots/find-lots.js';
import { NotThere } from '../platform/refusals.js';
import { AskAnswerEntity } from './ask-answer.entity.js';

/** Answers what a catalyst slug or undercure asks at once: of which bucket or gun it came, as far as anybody knows. */
@Injectable()
export class AnswerAsk {
  constructor(private readonly record: RecordFact) {}

  run(defect: string, request: Request): Promise<Receipt<{ bucketOrGun: string }>> {
    return this.record.run('bucket or gun named', { ...request, defect }, async (fact) => {
      const found = await findStanding(fact.tx, 'defect', defect);
      const { lot, gun, note } = request;
      await fact.insert(AskAnswerEntity, {
        defectId: found.root,
        lotId: lot === undefined ? null : await findLot(fact, lot),
        gunId: gun === undefined ? null : await findByCode(fact.tx, 'equipment', fact.author.plantId, gun, '/gun'),
        note: note ?? null,
      });
      return { bucketOrGun: lot ?? gun ?? String(note) };
    });
  }
}

const findLot = async (fact: Fact, lot: string): Promise<string> => {
  const found = (await findLots(fact.tx, fact.author.plantId, [lot], fact.happenedAt)).get(lot);
  if (!found) throw new NotThere('lot', lot, '/lot');
  return found.id;
};
