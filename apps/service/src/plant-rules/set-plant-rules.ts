import { Injectable } from '@nestjs/common';
import type { PlantRules, SetPlantRules as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { PlantRulesEntity } from './plant-rules.entity.js';

/** Quality chooses by which published rules the plant judges from then on. */
@Injectable()
export class SetPlantRules {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<PlantRules>> {
    return this.record.run('plant rules set', request, async (fact) => {
      const { marginRule, shopWindow, barcolFraction, reason } = request;
      await fact.insert(PlantRulesEntity, { marginRule, shopWindow, barcolFraction, reason });
      return { marginRule, shopWindow, barcolFraction };
    });
  }
}
