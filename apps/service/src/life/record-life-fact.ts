import { Injectable } from '@nestjs/common';
import type { RecordLifeFact as Request } from '@hull-record/contracts';
import type { Fact, Found } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { LifeFactEntity } from '../platform/life/life-fact.entity.js';
import { meetHin } from '../platform/life/meet-hin.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { keepText } from '../platform/texts/keep-text.js';
import { obstaclesOf } from '../platform/release/obstacles.js';
import { Unprocessable } from '../platform/refusals.js';

export interface LifeResult extends Found {
  readonly what: string;
}

const NEEDS_RELEASE = new Set(['left the place of manufacture', 'at dealer', 'sold to first purchaser', 'exported']);

/** Records a fact in the life of a boat. One that left before it was released is kept so, with a nonconformity. */
@Injectable()
export class RecordLifeFact {
  constructor(private readonly record: RecordFact) {}

  run(number: string, request: Request): Promise<Receipt<LifeResult>> {
    const write = async (fact: Fact): Promise<LifeResult> => {
      const hullId = await findHull(fact.tx, number);
      if (request.what === 'HIN affixed') await assertHasHin(fact, hullId);
      const dealerId =
        request.dealer === undefined
          ? null
          : await findByCode(fact.tx, 'dealer', fact.author.plantId, request.dealer, '/dealer');
      const { what, market = null } = request;
      const note = await keepText(fact, request.note);
      await fact.insert(LifeFactEntity, { hullId, what, dealerId, market, note });
      await openIfScrapped(fact, hullId, number, request.what);
      if (NEEDS_RELEASE.has(request.what)) await openIfUnreleased(fact, hullId, number, request.what);
      return { what: request.what, ...fact.found() };
    };
    return this.record.run(`life: ${request.what}`, { ...request, number }, write, { freeTexts: ['note'] });
  }
}

const assertHasHin = async (fact: Fact, hullId: string): Promise<void> => {
  await meetHin(fact.tx, hullId);
  const found = await fact.tx.query<unknown[]>("select from fact.hull_number where hull_id = $1 and kind = 'HIN'", [
    hullId,
  ]);
  if (found.length === 0) throw new Unprocessable('no-hin', 'The hull has no HIN on record: assign it first.', '/what');
};

const openIfUnreleased = async (fact: Fact, hullId: string, number: string, what: string): Promise<void> => {
  const released = await fact.tx.query<unknown[]>(
    `select from fact.life_fact f where f.hull_id = $1 and f.what = 'released' and f.happened_at <= $2 and ${standing('f')}`,
    [hullId, fact.happenedAt],
  );
  if (released.length > 0) return openIfQuestioned(fact, hullId, number, what);
  const detail = `Hull ${number}: "${what}" before it was released.`;
  await fact.open({ rule: 'left-before-release', detail, aboutKind: 'hull', aboutId: hullId, partId: null });
};

/** A hull that was released, and left while something stood in the way that came to light since. */
const openIfQuestioned = async (fact: Fact, hullId: string, number: string, what: string): Promise<void> => {
  const inTheWay = await obstaclesOf(fact.tx, hullId);
  if (inTheWay.length === 0) return;
  const detail = `Hull ${number}: "${what}" while ${inTheWay.length} things stood in the way that came to light after its release.`;
  await fact.open({ rule: 'left-while-questioned', detail, aboutKind: 'hull', aboutId: hullId, partId: null });
};

/** Something happened to a hull after it was scrapped: one of the two is not as it was. Kept, and said. */
const openIfScrapped = async (fact: Fact, hullId: string, number: string, what: string): Promise<void> => {
  if (what === 'scrapped') return;
  const scrapped = await fact.tx.query<unknown[]>(
    `select from fact.life_fact f where f.hull_id = $1 and f.what = 'scrapped' and f.happened_at <= $2 and ${standing('f')}`,
    [hullId, fact.happenedAt],
  );
  if (scrapped.length === 0) return;
  const detail = `Hull ${number}: "${what}" after it was scrapped.`;
  await fact.open({ rule: 'after-scrapping', detail, aboutKind: 'hull', aboutId: hullId, partId: null });
};
