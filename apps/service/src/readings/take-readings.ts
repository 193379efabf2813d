import { Injectable } from '@nestjs/common';
import type { TakeReadings as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { InvalidRequest } from '../platform/refusals.js';
import { findRule } from './find-rule.js';
import { judgeOne, type JudgedReading } from './judge-one.js';
import { ReadingEntity } from './reading.entity.js';
import { placeProblems } from './place-problems.js';
import { gaugeWarnings, unitProblem } from './unit-problem.js';

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

  run(of: 'layer' | 'repair', id: string, request: Request): Promise<Receipt<TakenReadings>> {
    return this.record.run(`readings of ${of}`, { ...request, of, about: id }, async (fact) => {
      type Row = { id: string; root: string; part_id: string };
      const about = await findStanding<Row>(fact.tx, of === 'layer' ? 'layer_record' : 'repair', id);
      await assertFits(fact, request, about.part_id);
      const { plantId } = fact.author;
      const equipmentId =
        request.equipment === undefined
          ? null
          : await findByCode(fact.tx, 'equipment', plantId, request.equipment, '/equipment');
      const rule = await findRule(fact.tx, of, about.root, request.what);
      const first = await nextSpot(fact, about.root, request.what);
      const judged = request.spots.map((spot) => judgeOne(spot, request.unit, rule));
      const ids = await fact.insertMany(
        ReadingEntity,
        judged.map(({ verdict, ...reading }, i) => ({
          ofKind: of,
          ofId: about.root,
          what: request.what,
          spot: first + i,
          ...reading,
          unit: request.unit,
          place: request.spots[i]?.place ?? null,
          equipmentId,
          verdict: verdict.verdict,
          crossesLimit: verdict.crossesLimit,
          rule,
        })),
      );
      return summary(judged, ids, first, gaugeWarnings(request));
    });
  }
}

const assertFits = async (fact: Fact, request: Request, partId: string): Promise<void> => {
  const problems = [...unitProblem(request), ...(await placeProblems(fact.tx, partId, request.spots))];
  if (problems.length > 0) throw new InvalidRequest(problems);
};

const summary = (
  judged: readonly JudgedReading[],
  ids: readonly string[],
  first: number,
  warnings: readonly string[],
): TakenReadings => ({
  inside: judged.filter(({ verdict }) => verdict.verdict === 'inside').length,
  outside: judged.filter(({ verdict }) => verdict.verdict === 'outside').length,
  spots: judged.map(({ verdict }, i) => ({
    id: ids[i] as string,
    spot: first + i,
    verdict: verdict.verdict,
    side: verdict.side ?? null,
    note: verdict.note ?? null,
  })),
  warnings,
});

/** Spots of one kind count on through a layer, also over several calls; two at once wait for each other. */
const nextSpot = async (fact: Fact, ofId: string, what: string): Promise<number> => {
  await fact.tx.query('select pg_advisory_xact_lock(hashtextextended($1, 4))', [`${ofId}/${what}`]);
  const [row] = await fact.tx.query<{ next: number }[]>(
    `select coalesce(max(g.spot), 0) + 1 as next from fact.reading g where g.of_id = $1 and g.what = $2 and ${standing('g')}`,
    [ofId, what],
  );
  return row?.next ?? 1;
};
