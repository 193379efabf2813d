import { Injectable } from '@nestjs/common';
import type { ReportDefect as Request } from '@hull-record/contracts';
import { isDefectKind, parseD714 } from '@hull-record/trade';
import type { Fact } from '../platform/facts/fact.js';
import { asksOf } from '../platform/release/asks.sql.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { InvalidRequest } from '../platform/refusals.js';
import { DefectEntity } from './defect.entity.js';
import { findLayerOfPart } from './find-layer-of-part.js';
import { nextNumber } from '../platform/marks/marks.js';
import { placeOnPart } from './place-on-part.js';

export interface ReportedDefect {
  readonly mark: string;
  readonly percentOfLength: number | null;
  readonly zone: string;
  readonly asks: readonly string[];
}

/** Reports a defect at its place. The place is checked against the model, and its zone follows from it. */
@Injectable()
export class ReportDefect {
  constructor(private readonly record: RecordFact) {}

  run(part: string, request: Request): Promise<Receipt<ReportedDefect>> {
    assertWords(request);
    return this.record.run('defect reported', { ...request, part }, async (fact) => {
      const partId = await findByCode(fact.tx, 'part', fact.author.plantId, part);
      const { percentOfLength, zone } = await placeOnPart(fact.tx, partId, request.place, '/place');
      const number = await nextNumber(fact, 'defect', partId);
      await fact.insert(DefectEntity, {
        partId,
        number,
        scheduleLayerId: request.layer === undefined ? null : await findLayerOfPart(fact.tx, partId, request.layer),
        kind: request.kind,
        place: request.place,
        percentOfLength,
        zone,
        lengthMm: request.lengthMm ?? null,
        widthMm: request.widthMm ?? null,
        depthMm: request.depthMm ?? null,
        grade: request.grade ?? null,
        counted: request.counted ?? null,
        countedAreaM2: request.countedAreaM2 ?? null,
        note: request.note ?? null,
      });
      return { mark: `D${number}`, percentOfLength, zone, asks: await asksOfDefect(fact) };
    });
  }
}

/** A defect of cure asks at once for hardness there and for the bucket or gun. */
const asksOfDefect = async (fact: Fact): Promise<readonly string[]> => {
  const [row] = await fact.tx.query<[{ asks: string[] }]>(
    `select ${asksOf('d')} as asks from fact.defect d where d.id = $1`,
    [fact.id],
  );
  return row.asks;
};

const assertWords = ({ kind, grade }: Request): void => {
  if (!isDefectKind(kind))
    throw new InvalidRequest([
      { pointer: '/kind', detail: `${kind} is not a kind of defect: see GET /api/defect-kinds` },
    ]);
  if (grade === undefined) return;
  if (kind !== 'blister')
    throw new InvalidRequest([{ pointer: '/grade', detail: 'only blisters are graded by ASTM D714: leave it out' }]);
  if (!parseD714(grade)) {
    throw new InvalidRequest([
      {
        pointer: '/grade',
        detail: 'is not an ASTM D714 grade: write 8, 6, 4 or 2 with F, M, MD or D, such as 6M; or 10',
      },
    ]);
  }
};
