import { Injectable } from '@nestjs/common';
import type { ReportDefect as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { asksOf } from '../platform/release/asks.sql.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { assertDefectWords } from '../platform/defects/defect-words.js';
import { writeDefect } from '../platform/defects/write-defect.js';

export interface ReportedDefect {
  readonly mark: string;
  readonly percentOfLength: number | null;
  readonly zone: string;
  readonly asks: readonly string[];
}

/** Reports a defect at its place. The place is checked against the model, and its zone follows from it. */
@Injectable()
export class ReportDefect {
  constructor(private readonly record: RecordFact) {}

  run(part: string, request: Request): Promise<Receipt<ReportedDefect>> {
    assertDefectWords(request);
    const write = async (fact: Fact): Promise<ReportedDefect> => {
      const partId = await findByCode(fact.tx, 'part', fact.author.plantId, part);
      const { number, percentOfLength, zone } = await writeDefect(fact, partId, request, '');
      return { mark: `D${number}`, percentOfLength, zone, asks: await asksOfDefect(fact) };
    };
    return this.record.run('defect reported', { ...request, part }, write, { freeTexts: ['note'] });
  }
}

/** A defect of cure asks at once for hardness there and for the bucket or gun. */
const asksOfDefect = async (fact: Fact): Promise<readonly string[]> => {
  const [row] = await fact.tx.query<[{ asks: string[] }]>(
    `select ${asksOf('d')} as asks from fact.defect d where d.id = $1`,
    [fact.id],
  );
  return row.asks;
};
