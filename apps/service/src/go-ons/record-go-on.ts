import { Injectable } from '@nestjs/common';
import type { GoOn as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { Conflict } from '../platform/refusals.js';
import { remedyOf, whoLifts } from '../platform/release/who-lifts.js';
import { GoOnEntity } from './go-on.entity.js';

/** A shift lead goes on under nonconformance: at night work goes on, and quality disposes before release. */
@Injectable()
export class RecordGoOn {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ rules: readonly string[] }>> {
    assertLiftable(request.rules);
    return this.record.run('went on under nonconformance', request, async (fact) => {
      const { part, layer = null, lot = null, rules, reason } = request;
      const partId = part === undefined ? null : await findByCode(fact.tx, 'part', fact.author.plantId, part, '/part');
      await fact.insert(GoOnEntity, { partId, layer, lotCode: lot, rules, reason, ledBy: fact.author.personId });
      return { rules };
    });
  }
}

const assertLiftable = (rules: readonly string[]): void => {
  const i = rules.findIndex((rule) => whoLifts(rule) === 'nobody');
  const rule = rules[i];
  if (rule !== undefined)
    throw new Conflict('nobody-goes-on', `Nobody goes on over ${rule}. ${remedyOf(rule)}`, `/rules/${i}`);
};
