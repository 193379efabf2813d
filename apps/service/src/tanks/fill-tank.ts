import { Injectable } from '@nestjs/common';
import type { FillTank as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { FROM_THE_LOT } from '../platform/lots/drawn-row.js';
import { findLots } from '../platform/lots/find-lots.js';
import { makeLot, type MadeLot } from '../platform/lots/make-lot.js';
import { kilogramsOf } from '../platform/lots/known-amount.js';
import { resolveTaken, type ResolvedTaken } from '../platform/lots/resolve-taken.js';
import { Conflict, Unprocessable } from '../platform/refusals.js';
import { followTank } from '../platform/lots/follow-tank.js';
import { lastFill, type LastFill } from './last-fill.js';

/**
 * Fills a tank. What is in it afterwards is a new lot, made of the measured heel of the lot before and of what came in;
 * what the heel differs from the book is a loss or gain of the lot before (see book-kg.ts). What was drawn after the fill, but
 * recorded before it, was drawn from the new lot: it is corrected.
 */
@Injectable()
export class FillTank {
  constructor(private readonly record: RecordFact) {}

  run(tank: string, request: Request): Promise<Receipt<MadeLot>> {
    const decide = async (fact: Fact): Promise<MadeLot> => {
      const tankId = await findByCode(fact.tx, 'tank', fact.author.plantId, tank);
      const before = await lastFill(fact.tx, tankId);
      assertAfter(fact, tank, before);
      const inputs = await resolveTaken(fact, request.inputs, (i) => `/inputs/${i}`);
      const heel = await heelOf(fact, request, before);
      const made = await makeLot(fact, {
        code: request.code,
        origin: 'tank',
        tank: { id: tankId, fillNumber: (before?.fill_number ?? 0) + 1 },
        inputs: heel ? [heel, ...inputs] : inputs,
      });
      await followTank(fact, tankId, `The fill of lot ${request.code} was recorded after this.`, '/happenedAt');
      return made;
    };
    // What was drawn after a fill that is recorded late is corrected, so nobody may draw meanwhile.
    return this.record.run('tank filled', { ...request, tank }, decide, { genealogy: 'alone' });
  }
}

const assertAfter = (fact: Fact, tank: string, before: LastFill | undefined): void => {
  if (before && before.happened_at >= fact.happenedAt) {
    throw new Conflict(
      'tank-fill-out-of-order',
      `Tank ${tank} has a fill of ${before.happened_at.toISOString()} on record already: a fill that happened before it cannot be added behind it. Correct the amounts of that fill, or record the time as it was.`,
      '/happenedAt',
    );
  }
};

const heelOf = async (
  fact: Fact,
  request: Request,
  before: LastFill | undefined,
): Promise<ResolvedTaken | undefined> => {
  if (request.heel === null) return undefined;
  if (!before) {
    throw new Unprocessable(
      'no-heel-before-first-fill',
      'The tank was never filled: give null for the heel, or name what was in it as an input.',
      '/heel',
    );
  }
  const lots = await findLots(fact.tx, fact.author.plantId, [before.id], fact.happenedAt);
  const lot = lots.get(before.id);
  if (!lot) return undefined;
  return { lot, drawn: FROM_THE_LOT, amount: kilogramsOf(request.heel, lot, '/heel') };
};
