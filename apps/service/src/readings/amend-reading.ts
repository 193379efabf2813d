import { Injectable } from '@nestjs/common';
import type { CorrectedValues, Spot } from '@hull-record/contracts';
import type { UnitCode } from '@hull-record/trade';
import { Amendments } from '../platform/facts/amendments.js';
import type { Fact } from '../platform/facts/fact.js';
import { insertVersion, readVersion } from '../platform/facts/new-version.js';
import { InvalidRequest } from '../platform/refusals.js';
import { partOfRead } from './find-read.js';
import type { JudgingRule } from './find-rule.js';
import { judgeOne } from './judge-one.js';
import { placeProblems } from './place-problems.js';
import { ReadingEntity } from './reading.entity.js';

type SetReading = Extract<CorrectedValues, { kind: 'reading' }>;

/** Sets a reading anew. It is judged by the rule that the old one was judged by. */
@Injectable()
export class AmendReading {
  constructor(amendments: Amendments) {
    amendments.of('reading', async (fact, oldId, newId, set) => {
      const old = await readVersion(fact, ReadingEntity, oldId);
      await assertOnPart(fact, set, old);
      const { verdict, ...judged } = judgeOne(spotOf(set, old), old.unit as UnitCode, old.rule as JudgingRule);
      await insertVersion(fact, ReadingEntity, oldId, newId, {
        ...judged,
        verdict: verdict.verdict,
        crossesLimit: verdict.crossesLimit,
        place: set.place,
      });
    });
  }
}

const assertOnPart = async (fact: Fact, set: SetReading, old: ReadingEntity): Promise<void> => {
  const partId = await partOfRead(fact.tx, old.ofKind, old.ofId);
  const problems = await placeProblems(fact.tx, partId, [set], () => '/set');
  if (problems.length > 0) throw new InvalidRequest(problems);
};

const spotOf = (set: SetReading, old: ReadingEntity): Spot => {
  if (set.value !== undefined && set.lastWet === undefined && set.nextDry === undefined) return { value: set.value };
  const lastWet = set.lastWet ?? old.value;
  const nextDry = set.nextDry ?? old.below;
  if (set.value !== undefined)
    throw new InvalidRequest([{ pointer: '/set/value', detail: 'give either value, or lastWet and nextDry' }]);
  if (nextDry === null) return { value: lastWet };
  if (Number(nextDry) <= Number(lastWet))
    throw new InvalidRequest([{ pointer: '/set/nextDry', detail: 'must be more than lastWet' }]);
  return { lastWet, nextDry };
};
