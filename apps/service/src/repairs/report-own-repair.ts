import { Injectable } from '@nestjs/common';
import type { OwnOutsideRepair, ReportOwnRepair as Request } from '@hull-record/contracts';
import type { EntityManager } from 'typeorm';
import { assertDefectWords } from '../platform/defects/defect-words.js';
import type { Fact, Found } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findOwnHull } from '../platform/life/find-own-hull.js';
import { partOfHull, partsOfHull } from '../platform/lookups/find-part-of-hull.js';
import { firstDayOf } from '../platform/lookups/first-day-of.js';
import { InvalidRequest } from '../platform/refusals.js';
import { writeRepair } from './write-repair.js';

export interface ReportedRepair extends Found {
  readonly mark: string;
  readonly part: string;
  readonly defects: readonly string[];
}

const TEXTS = ['note', 'spots.*.note'];

/**
 * Reports an outside repair as the dealer of the hull, of an own hull alone. Nobody of the plant witnessed it: it stays
 * to be judged by its quality people, and names no lot of the plant.
 */
@Injectable()
export class ReportOwnRepair {
  constructor(private readonly record: RecordFact) {}

  run(number: string, request: Request): Promise<Receipt<ReportedRepair>> {
    request.spots.forEach((spot, i) => assertDefectWords(spot, `/spots/${i}`));
    assertDone(request);
    const write = async (fact: Fact): Promise<ReportedRepair> => {
      const { hullId, dealerId } = await findOwnHull(fact.tx, number);
      const part = partOfHull(await partsOfHull(fact.tx, hullId), request.part, '/part');
      await assertBegun(fact.tx, part.id, request.outside.doneOn);
      const told = { ...request, partId: part.id, makers: [fact.author.personId], used: [], dealerId };
      const { mark, defects } = await writeRepair(fact, { ...told, outside: outsideOf(request.outside) });
      return { mark, part: part.number, defects, ...fact.found() };
    };
    return this.record.run('own repair reported', { ...request, number }, write, { freeTexts: TEXTS });
  }
}

/** @throws InvalidRequest for a day before the part was begun, by more than zones can differ */
const assertBegun = async (tx: EntityManager, partId: string, doneOn: string): Promise<void> => {
  if (doneOn < (await firstDayOf(tx, 'part', partId)))
    throw new InvalidRequest([
      { pointer: '/outside/doneOn', detail: 'is before the part was begun: name the day on which it was finished' },
    ]);
};

const outsideOf = ({ doneOn, ...outside }: OwnOutsideRepair) => ({ ...outside, when: doneOn });

/** @throws InvalidRequest for a day after the one on which it is reported, whatever the zone of the yard */
const assertDone = ({ outside, happenedAt }: Request): void => {
  const latest = new Date(Date.parse(happenedAt) + 14 * 3_600_000).toISOString().slice(0, 10);
  if (outside.doneOn > latest)
    throw new InvalidRequest([
      { pointer: '/outside/doneOn', detail: 'is after the day on which it is reported: report it when it is done' },
    ]);
};
