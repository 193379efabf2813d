import { Injectable } from '@nestjs/common';
import type { CheckEquipment as Request } from '@hull-record/contracts';
import { catchRates, judgeSpot, type CaughtAmounts } from '@hull-record/trade';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { InvalidRequest } from '../platform/refusals.js';
import { EquipmentCheckEntity } from './equipment-check.entity.js';

export interface Checked {
  readonly good: boolean;
  readonly value: number | null;
  readonly unit: string | null;
  readonly worked: Readonly<Record<string, number>>;
}

/**
 * Records a check of equipment: judged by limits, or said by who did it. When it is bad, everything since the last good
 * check of its kind is suspect (ISO 9001:2015 7.1.5.2); the values stay as they are.
 */
@Injectable()
export class CheckEquipment {
  constructor(private readonly record: RecordFact) {}

  run(code: string, request: Request): Promise<Receipt<Checked>> {
    const judged = judge(request);
    return this.record.run('equipment checked', { ...request, code }, async (fact) => {
      const equipmentId = await findByCode(fact.tx, 'equipment', fact.author.plantId, code);
      const { good, value, unit } = judged;
      await fact.insert(EquipmentCheckEntity, {
        ...{ equipmentId, what: request.what, value, unit, good, limits: request.limits ?? null },
        ...{ measured: request.caught ?? {}, certificate: request.certificate ?? null, note: request.note ?? null },
      });
      return judged;
    });
  }
}

const judge = (request: Request): Checked => {
  const { what, caught, limits } = request;
  const rates = caught === undefined ? undefined : catchRates(caught as CaughtAmounts);
  const worked = { ...rates };
  const value = rates === undefined ? (request.value ?? null) : (rates.catalystPercent ?? rates.kgPerMinute ?? null);
  const unit = rates === undefined ? (request.unit ?? null) : rates.catalystPercent === undefined ? null : '%';
  const measured = value !== null && unit !== null ? { value, unit } : { value: null, unit: null };
  if (limits === undefined || measured.value === null) {
    if (request.good === undefined)
      throw new InvalidRequest([
        { pointer: '/good', detail: `say whether the ${what} was good, or give a value and limits` },
      ]);
    return { good: request.good, ...measured, worked };
  }
  const { verdict, note } = judgeSpot({ low: measured.value, unit: measured.unit as never }, limits);
  if (verdict === 'cannot be judged')
    throw new InvalidRequest([{ pointer: '/limits', detail: note ?? 'cannot be judged' }]);
  const good = verdict === 'inside';
  if (request.good !== undefined && request.good !== good)
    throw new InvalidRequest([
      { pointer: '/good', detail: `the value is ${verdict} of its limits: leave this out, or mend the value` },
    ]);
  return { good, ...measured, worked };
};
