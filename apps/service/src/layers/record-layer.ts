import { Injectable } from '@nestjs/common';
import type { RecordLayer as Request, Stops } from '@hull-record/contracts';
import { findPeople } from '../platform/facts/author.js';
import type { Fact, Found } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { assertNotAhead } from '../platform/facts/not-ahead.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { Rehearse } from '../platform/facts/rehearse.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { openIfScrapped } from '../platform/release/open-if-scrapped.js';
import { Conflict } from '../platform/refusals.js';
import { judgeAlone } from '../platform/verdicts/keep-verdict.js';
import { totalKg, writeUsed } from '../platform/used/write-used.js';
import { brokenLayerRules } from './broken-layer-rules.js';
import { climateColumns } from './climate-columns.js';
import { findScheduleLayer } from '../platform/layers/find-schedule-layer.js';
import { judgeOrder } from './judge-order.js';
import { LayerRecordEntity } from './layer-record.entity.js';

/** A layer as it was made, whatever entry it came in. */
export type LayerAsMade = Pick<
  Request,
  'layer' | 'startedAt' | 'endedAt' | 'doneBy' | 'climate' | 'area' | 'surfacePrepared' | 'used' | 'note'
>;

export interface MadeResult extends Found {
  readonly kg: number;
}

/**
 * Records a layer as it was made. It is kept whatever rule it broke; each break is opened as a nonconformity, which
 * blocks release until quality disposes of it.
 */
@Injectable()
export class RecordLayer {
  constructor(
    private readonly record: RecordFact,
    private readonly rehearse: Rehearse,
  ) {}

  run(part: string, request: Request): Promise<Receipt<MadeResult>> {
    assertNotAhead(request.startedAt, '/startedAt');
    assertNotAhead(request.endedAt, '/endedAt');
    return this.record.run('layer recorded', { ...request, part }, async (fact) => {
      const { layer: _layer, ...made } = await this.decide(fact, part, request);
      return made;
    });
  }

  /** Says what recording it would find wrong, and records nothing. */
  check(part: string, request: Request): Promise<Stops> {
    return this.rehearse.run(request, (fact) => this.decide(fact, part, request));
  }

  /** Keeps one layer, also as one of several: what was used stands at the same place in both requests. */
  async decide(fact: Fact, part: string, request: LayerAsMade): Promise<MadeResult & { readonly layer: string }> {
    const partId = await findByCode(fact.tx, 'part', fact.author.plantId, part);
    await judgeAlone(fact, 'order of layers', partId);
    const layer = await findScheduleLayer(fact.tx, partId, request.layer, '/layer');
    const makers = [...(await findPeople(fact.tx, request.doneBy, (i) => `/doneBy/${i}`))].sort();
    const id = await fact.insert(LayerRecordEntity, {
      partId,
      scheduleLayerId: layer.id,
      turn: await nextTurn(fact, partId, layer.id),
      startedAt: new Date(request.startedAt),
      endedAt: new Date(request.endedAt),
      makers,
      ...climateColumns(request.climate),
      area: request.area ?? null,
      surfacePrepared: request.surfacePrepared ?? null,
      note: request.note ?? null,
    });
    const taken = await writeUsed(
      fact,
      { kind: 'layer', id, partId },
      request.used,
      new Date(request.endedAt),
      (i) => `/used/${i}`,
    );
    await openIfScrapped(fact, partId, {
      rule: 'work-on-scrapped-part',
      what: `${layer.name} was made`,
      kind: 'layer',
      id,
    });
    const lots = taken.map(({ lot }) => lot.id);
    for (const broken of await brokenLayerRules(fact.tx, { partId, layer, request, lots })) {
      await fact.open({ ...broken, aboutKind: 'layer', aboutId: id, partId });
    }
    await judgeOrder(fact, partId, { since: new Date(request.startedAt), but: id });
    return { layer: id, kg: totalKg(taken), ...fact.found() };
  }
}

/**
 * How often this layer of the part was begun to be recorded, and one more; of two at once the unique key refuses one.
 *
 * @throws Conflict `layer-recorded` when a record of it stands, also one that a correction brought here
 */
const nextTurn = async (fact: Fact, partId: string, scheduleLayerId: string): Promise<number> => {
  const [row] = await fact.tx.query<[{ turn: number; recorded: boolean }]>(
    `select count(*) filter (where r.root = r.id)::int + 1 as turn, coalesce(bool_or(${standing('r')}), false) as recorded
     from fact.layer_record r where r.part_id = $1 and r.schedule_layer_id = $2`,
    [partId, scheduleLayerId],
  );
  if (row.recorded)
    throw new Conflict('layer-recorded', 'This layer is recorded already: add to it, or correct it.', '/layer');
  return row.turn;
};
