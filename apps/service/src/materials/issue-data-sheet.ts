import { Injectable } from '@nestjs/common';
import type { IssueDataSheet as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { DataSheetEntity } from './data-sheet.entity.js';

/** Records a new issue of a data sheet. What was judged keeps the limits of its time. */
@Injectable()
export class IssueDataSheet {
  constructor(private readonly record: RecordFact) {}

  run(material: string, request: Request): Promise<Receipt<{ material: string; issue: string }>> {
    return this.record.run('data sheet issued', { ...request, material }, async (fact) => {
      const materialId = await findByCode(fact.tx, 'material', fact.author.plantId, material);
      const { issue, makerData } = request;
      await fact.insert(DataSheetEntity, { materialId, issue, makerData });
      return { material, issue };
    });
  }
}
