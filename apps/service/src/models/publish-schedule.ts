import { Injectable } from '@nestjs/common';
import type { PublishSchedule as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { InvalidRequest, Unprocessable } from '../platform/refusals.js';
import { ScheduleLayerEntity } from './schedule-layer.entity.js';
import { ScheduleEntity } from './schedule.entity.js';

/** Publishes a version of a laminate schedule. It never changes afterwards: parts are judged by what held when they were made. */
@Injectable()
export class PublishSchedule {
  constructor(private readonly record: RecordFact) {}

  run(model: string, request: Request): Promise<Receipt<{ version: number; layers: number }>> {
    assertCodes(request);
    assertPredecessors(request);
    return this.record.run('schedule published', { ...request, model }, async (fact) => {
      const modelId = await findByCode(fact.tx, 'model', fact.author.plantId, model);
      await assertMaterials(fact, request);
      const scheduleId = await fact.insert(ScheduleEntity, {
        modelId,
        partKind: request.partKind,
        version: request.version,
        process: request.process,
      });
      await fact.insertMany(
        ScheduleLayerEntity,
        request.layers.map((layer, i) => ({
          scheduleId,
          position: i + 1,
          ...layer,
          areaM2: layer.areaM2 ?? null,
          laminate: layer.laminate ?? null,
          lossAllowance: layer.lossAllowance ?? null,
          climate: layer.climate ?? null,
          layUpWindow: layer.layUpWindow ?? null,
          holdPoint: layer.holdPoint ?? null,
        })),
      );
      return { version: request.version, layers: request.layers.length };
    });
  }
}

/** The database says of two alike that there are two; here is said which. */
const assertCodes = ({ layers }: Request): void => {
  const second = layers.findIndex(({ code }, i) => layers.findIndex((other) => other.code === code) < i);
  if (second < 0) return;
  throw new Unprocessable(
    'layer-code-twice',
    'Two layers have the same code: each layer has its own.',
    `/layers/${second}/code`,
  );
};

/** A layer waits for layers that come before it in the schedule: so there is always one to begin with. */
const assertPredecessors = ({ layers }: Request): void => {
  const wrong = layers.flatMap((layer, i) =>
    layer.predecessors.flatMap((code, k) =>
      layers.findIndex((other) => other.code === code) < i && layers.some((other) => other.code === code)
        ? []
        : [
            {
              pointer: `/layers/${i}/predecessors/${k}`,
              detail: `${code} is not a layer before ${layer.code}: name one that stands above it`,
            },
          ],
    ),
  );
  if (wrong.length > 0) throw new InvalidRequest(wrong);
};

const assertMaterials = async (fact: Fact, { layers }: Request): Promise<void> => {
  const known = await fact.tx.query<{ code: string }[]>(
    `select m.code from fact.material m where m.plant_id = $1 and ${standing('m')}`,
    [fact.author.plantId],
  );
  const codes = new Set(known.map((material) => material.code));
  const wrong = layers.flatMap((layer, i) =>
    layer.materials.flatMap(({ material }, k) =>
      codes.has(material)
        ? []
        : [
            {
              pointer: `/layers/${i}/materials/${k}/material`,
              detail: `There is no material ${material}: register it first.`,
            },
          ],
    ),
  );
  if (wrong.length > 0) throw new InvalidRequest(wrong);
};
