import { Injectable } from '@nestjs/common';
import type { CorrectHin as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { HIN_PLACEMENT } from '@hull-record/trade';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { meetHin } from '../platform/life/meet-hin.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { Conflict } from '../platform/refusals.js';
import { assertNeverIssued, readHin, type AssignedHin } from './assign-hin.js';
import { HullNumberEntity } from './hull-number.entity.js';

/**
 * Corrects the HIN of a hull after it was affixed, citing the authority for it: nobody removes or alters one without
 * (33 CFR 181.35, from memory; States forbid it under 33 CFR 187.321). The old number finds the hull for ever.
 */
@Injectable()
export class CorrectHin {
  constructor(private readonly record: RecordFact) {}

  run(number: string, request: Request): Promise<Receipt<AssignedHin>> {
    const reading = readHin(request.hin);
    return this.record.run('HIN corrected', { ...request, number }, async (fact) => {
      const hullId = await findHull(fact.tx, number);
      await meetHin(fact.tx, hullId);
      await assertAffixed(fact, hullId);
      await assertNeverIssued(fact, reading);
      const { authority, reason } = request;
      const printed = { normalised: reading.hin, asPrinted: reading.display };
      await fact.insert(HullNumberEntity, { hullId, kind: 'HIN', ...printed, reason, authority });
      return { hin: reading.hin, display: reading.display, warnings: reading.warnings, placement: HIN_PLACEMENT };
    });
  }
}

const assertAffixed = async (fact: Fact, hullId: string): Promise<void> => {
  const affixed = await fact.tx.query<unknown[]>(
    `select from fact.life_fact f where f.hull_id = $1 and f.what = 'HIN affixed' and ${standing('f')}`,
    [hullId],
  );
  if (affixed.length === 0)
    throw new Conflict(
      'hin-not-affixed',
      'The HIN is not affixed yet: change it with a reason, no authority is needed.',
      '/hin',
    );
};
