import { Injectable } from '@nestjs/common';
import type { FillTank as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { FROM_THE_LOT } from '../platform/lots/drawn-row.js';
import { bookKg } from '../platform/lots/book-kg.js';
import { findLots } from '../platform/lots/find-lots.js';
import { makeLot, type MadeLot } from '../platform/lots/make-lot.js';
import { kilogramsOf } from '../platform/lots/known-amount.js';
import type { ResolvedTaken } from '../platform/lots/resolved-taken.js';
import { resolveTaken } from '../platform/lots/resolve-taken.js';
import { Conflict, Unprocessable } from '../platform/refusals.js';
import { followTank } from '../platform/lots/follow-tank.js';
import { openHeelsOfEmptied } from './heel-of-emptied.js';
import { fillBefore, nextFillNumber, type LastFill } from './last-fill.js';

/**
 * Fills a tank, also when the fill is entered after later ones. What is in it afterwards is a new lot, made of the measured heel of the lot before and of what came in;
 * what the heel differs from the book is a loss or gain of the lot before (see book-kg.ts). What was drawn after the fill, but
 * recorded before it, was drawn from the new lot, and the heel of the next fill was of it: they are corrected.
 */
@Injectable()
export class FillTank {
  constructor(private readonly record: RecordFact) {}

  run(tank: string, request: Request): Promise<Receipt<MadeLot>> {
    const decide = async (fact: Fact): Promise<MadeLot> => {
      const tankId = await findByCode(fact.tx, 'tank', fact.author.plantId, tank);
      const before = await fillBefore(fact.tx, tankId, fact.happenedAt);
      assertAlone(fact, tank, before);
      const inputs = await resolveTaken(fact, request.inputs, (i) => `/inputs/${i}`);
      const heel = await heelOf(fact, request, before);
      if (!heel && before) await warnOfLost(fact, tankId, before);
      const made = await makeLot(fact, {
        code: request.code,
        origin: 'tank',
        tank: { id: tankId, fillNumber: await nextFillNumber(fact.tx, tankId) },
        inputs: heel ? [heel, ...inputs] : inputs,
      });
      await followTank(fact, tankId, `The fill of lot ${request.code} was recorded after this.`);
      await openHeelsOfEmptied(fact, tank, tankId);
      return made;
    };
    // What was drawn after a fill that is recorded late is corrected, so nobody may draw meanwhile.
    return this.record.run('tank filled', { ...request, tank }, decide, { genealogy: 'alone' });
  }
}

/** Fills stand in the order in which they happened, whenever they are entered; of two at one instant none is first. */
const assertAlone = (fact: Fact, tank: string, before: LastFill | undefined): void => {
  if (before && before.happened_at.getTime() === fact.happenedAt.getTime()) {
    throw new Conflict(
      'tank-fill-out-of-order',
      `Tank ${tank} has a fill at that very instant on record already: look at the tank, and give the time of each as it was.`,
      '/happenedAt',
    );
  }
};

/** An empty tank of which the book says that something was left: it is booked as lost, and said. */
const warnOfLost = async (fact: Fact, tankId: string, before: LastFill): Promise<void> => {
  const [row] = await fact.tx.query<[{ kg: number; emptied: boolean }]>(
    `select ${bookKg('$1::uuid')} as kg, exists (
       select from fact.tank_emptied e where e.tank_id = $2 and e.happened_at between $3 and $4 and ${standing('e')}) as emptied`,
    [before.id, tankId, before.happened_at, fact.happenedAt],
  );
  if (!row.emptied && row.kg > 1e-6)
    fact.warn(`The tank was said to be empty; by the book ${row.kg.toFixed(1)} kg were left, which count as lost.`);
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
