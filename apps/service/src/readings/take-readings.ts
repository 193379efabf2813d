import { Injectable } from '@nestjs/common';
import type { ReadJoint, TakeReadings as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { holdsOnEquipment } from '../platform/holds/warn-of-holds.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { InvalidRequest } from '../platform/refusals.js';
import { findRead, type ReadKind } from './find-read.js';
import { findRule } from './find-rule.js';
import { judgeOne, type JudgedReading } from './judge-one.js';
import { numberSpots } from './number-spots.js';
import { ReadingEntity } from './reading.entity.js';
import { placeProblems } from './place-problems.js';
import { gaugeWarnings, kindProblems } from './kind-problems.js';

export interface TakenReadings {
  readonly inside: number;
  readonly outside: number;
  readonly spots: readonly { id: string; spot: number; verdict: string; side: string | null; note: string | null }[];
  readonly warnings: readonly string[];
}

/** Takes readings at many spots in one call. Each spot is judged by itself, and keeps the limits it was judged by. */
@Injectable()
export class TakeReadings {
  constructor(private readonly record: RecordFact) {}

  run(of: ReadKind, id: string, request: Request | ReadJoint): Promise<Receipt<TakenReadings>> {
    return this.record.run(`readings of ${of}`, { ...request, of, about: id }, async (fact) => {
      const about = await findRead(fact, of, id);
      await assertFits(fact, of, request, about.partId);
      const { plantId } = fact.author;
      const equipmentId =
        request.equipment === undefined
          ? null
          : await findByCode(fact.tx, 'equipment', plantId, request.equipment, '/equipment');
      const rule = await findRule(fact.tx, of, about.root, request.what, 'limits' in request ? request : undefined);
      const numbers = await numberSpots(fact, about.root, request);
      const judged = request.spots.map((spot) => judgeOne(spot, request.unit, rule));
      const ids = await fact.insertMany(
        ReadingEntity,
        judged.map(({ verdict, ...reading }, i) => ({
          ofKind: of,
          ofId: about.root,
          what: request.what,
          spot: numbers[i] as number,
          ...reading,
          unit: request.unit,
          place: request.spots[i]?.place ?? null,
          equipmentId,
          verdict: verdict.verdict,
          crossesLimit: verdict.crossesLimit,
          rule,
        })),
      );
      const held = equipmentId === null ? [] : await holdsOnEquipment(fact, equipmentId);
      const taken = summary(judged, ids, numbers, [...gaugeWarnings(request), ...held]);
      if (of === 'lot') await openOutside(fact, about.root, request, taken);
      return taken;
    });
  }
}

/** A lot that is outside stands in the way of every hull that it goes into, until quality disposes of it. */
const openOutside = async (
  fact: Fact,
  lot: string,
  { what, unit, spots }: Request,
  taken: TakenReadings,
): Promise<void> => {
  const outside = taken.spots.flatMap(({ verdict }, i) => (verdict === 'outside' ? [spots[i]?.value ?? ''] : []));
  if (outside.length === 0) return;
  const detail = `${what} of the lot is outside its limits: ${outside.join(', ')} ${unit}.`;
  await fact.open({ rule: 'lot-reading-outside', detail, aboutKind: 'lot', aboutId: lot, partId: null });
};

const assertFits = async (fact: Fact, of: ReadKind, request: Request, partId: string | null): Promise<void> => {
  const problems = [...kindProblems(of, request), ...(await placeProblems(fact.tx, partId, request.spots))];
  if (problems.length > 0) throw new InvalidRequest(problems);
};

const summary = (
  judged: readonly JudgedReading[],
  ids: readonly string[],
  numbers: readonly number[],
  warnings: readonly string[],
): TakenReadings => ({
  inside: judged.filter(({ verdict }) => verdict.verdict === 'inside').length,
  outside: judged.filter(({ verdict }) => verdict.verdict === 'outside').length,
  spots: judged.map(({ verdict }, i) => ({
    id: ids[i] as string,
    spot: numbers[i] as number,
    verdict: verdict.verdict,
    side: verdict.side ?? null,
    note: verdict.note ?? null,
  })),
  warnings,
});
