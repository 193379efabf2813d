import { Injectable } from '@nestjs/common';
import type { EmptyTank as Request } from '@hull-record/contracts';
import type { Found } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { openHeelsOfEmptied } from './heel-of-emptied.js';
import { TankEmptiedEntity } from './tank-emptied.entity.js';

/** Records that a tank was emptied, and whether it was cleaned. */
@Injectable()
export class EmptyTank {
  constructor(private readonly record: RecordFact) {}

  run(tank: string, request: Request): Promise<Receipt<{ cleaned: boolean } & Found>> {
    return this.record.run('tank emptied', { ...request, tank }, async (fact) => {
      const tankId = await findByCode(fact.tx, 'tank', fact.author.plantId, tank);
      await fact.insert(TankEmptiedEntity, { tankId, cleaned: request.cleaned, note: request.note ?? null });
      await openHeelsOfEmptied(fact, tank, tankId);
      return { cleaned: request.cleaned, ...fact.found() };
    });
  }
}
