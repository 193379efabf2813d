import { Injectable } from '@nestjs/common';
import type { AssignHin as Request } from '@hull-record/contracts';
import { decodeHin, HIN_PLACEMENT, type ValidHin } from '@hull-record/trade';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { meetHin } from '../platform/life/meet-hin.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { Conflict, InvalidRequest, Unprocessable } from '../platform/refusals.js';
import { HullNumberEntity } from './hull-number.entity.js';

export interface AssignedHin {
  readonly hin: string;
  readonly display: string;
  readonly warnings: readonly string[];
  readonly placement: typeof HIN_PLACEMENT;
}

/**
 * Assigns a HIN (33 CFR 181 Subpart C, ISO 10087), or changes it with a reason until it is affixed.
 *
 * A number that was issued once is never issued again, also when the hull later got another.
 */
@Injectable()
export class AssignHin {
  constructor(private readonly record: RecordFact) {}

  run(number: string, request: Request): Promise<Receipt<AssignedHin>> {
    const reading = readHin(request.hin);
    return this.record.run('HIN assigned', { ...request, number }, async (fact) => {
      const hullId = await findHull(fact.tx, number);
      await meetHin(fact.tx, hullId);
      await assertMayAssign(fact, hullId, request);
      await assertNeverIssued(fact, reading);
      await fact.insert(HullNumberEntity, {
        hullId,
        kind: 'HIN',
        normalised: reading.hin,
        asPrinted: reading.display,
        reason: request.reason ?? null,
        authority: null,
      });
      return { hin: reading.hin, display: reading.display, warnings: reading.warnings, placement: HIN_PLACEMENT };
    });
  }
}

/** Reads a HIN, or refuses it position by position. */
export const readHin = (text: string): ValidHin => {
  const reading = decodeHin(text);
  if (reading.valid) return reading;
  throw new InvalidRequest(
    reading.problems.map(({ position, message }) => ({
      pointer: '/hin',
      detail: position === undefined ? message : `position ${position}: ${message}`,
    })),
  );
};

const assertMayAssign = async (fact: Fact, hullId: string, request: Request): Promise<void> => {
  const [has] = await fact.tx.query<{ hin: boolean; affixed: boolean }[]>(
    `select exists (select from fact.hull_number n where n.hull_id = $1 and n.kind = 'HIN') as hin,
       exists (select from fact.life_fact f where f.hull_id = $1 and f.what = 'HIN affixed' and ${standing('f')}) as affixed`,
    [hullId],
  );
  if (has?.affixed) {
    throw new Conflict(
      'hin-affixed',
      'The HIN is affixed: it is altered only by a correction that cites the authority for it (33 CFR 181.35).',
      '/hin',
    );
  }
  if (has?.hin && request.reason === undefined) {
    throw new Unprocessable('reason-missing', 'The hull has a HIN already: give the reason for the change.', '/reason');
  }
};

/** The database refuses a number twice too, also between two at once; here the refusal names the right field. */
export const assertNeverIssued = async (fact: Fact, { hin, display }: ValidHin): Promise<void> => {
  const issued = await fact.tx.query<unknown[]>('select from fact.hull_number where normalised = $1', [hin]);
  if (issued.length > 0)
    throw new Conflict('number-taken', `${display} was issued before, and a number is never issued twice.`, '/hin');
};
