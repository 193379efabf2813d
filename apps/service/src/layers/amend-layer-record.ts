import { Injectable } from '@nestjs/common';
import type { CorrectedValues } from '@hull-record/contracts';
import { Amendments } from '../platform/facts/amendments.js';
import { findPeople } from '../platform/facts/author.js';
import type { Fact } from '../platform/facts/fact.js';
import { insertVersion, readVersion } from '../platform/facts/new-version.js';
import { standing } from '../platform/facts/standing.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { Conflict, InvalidRequest } from '../platform/refusals.js';
import { climateColumns } from './climate-columns.js';
import { findScheduleLayer } from './find-schedule-layer.js';
import { LayerRecordEntity } from './layer-record.entity.js';

type SetLayer = Extract<CorrectedValues, { kind: 'layer record' }>;

/** Sets anew how a layer was made: part, layer, times, crew, climate. Its hold point must then be signed again. */
@Injectable()
export class AmendLayerRecord {
  constructor(amendments: Amendments) {
    amendments.of('layer record', async (fact, oldId, newId, set) => {
      const old = await readVersion(fact, LayerRecordEntity, oldId);
      const { partId, scheduleLayerId } = await whereOf(fact, old, set);
      const startedAt = set.startedAt === undefined ? old.startedAt : new Date(set.startedAt);
      const endedAt = set.endedAt === undefined ? old.endedAt : new Date(set.endedAt);
      if (endedAt < startedAt)
        throw new InvalidRequest([{ pointer: '/set/endedAt', detail: 'must not be before startedAt' }]);
      const makers =
        set.doneBy === undefined
          ? undefined
          : [...(await findPeople(fact.tx, set.doneBy, (i) => `/set/doneBy/${i}`))].sort();
      await insertVersion(fact, LayerRecordEntity, oldId, newId, {
        ...{ partId, scheduleLayerId, startedAt, endedAt, makers },
        ...(set.climate === undefined ? {} : climateColumns(set.climate)),
        note: set.note,
      });
    });
  }
}

const whereOf = async (
  fact: Fact,
  old: LayerRecordEntity,
  set: SetLayer,
): Promise<Pick<LayerRecordEntity, 'partId' | 'scheduleLayerId'>> => {
  if (set.part === undefined && set.layer === undefined) return old;
  const partId =
    set.part === undefined ? old.partId : await findByCode(fact.tx, 'part', fact.author.plantId, set.part, '/set/part');
  const [{ code }] = await fact.tx.query<[{ code: string }]>('select code from fact.schedule_layer where id = $1', [
    old.scheduleLayerId,
  ]);
  const layer = await findScheduleLayer(
    fact.tx,
    partId,
    set.layer ?? code,
    set.layer === undefined ? '/set/part' : '/set/layer',
  );
  await assertFree(fact, partId, layer.id, old.root);
  return { partId, scheduleLayerId: layer.id };
};

const assertFree = async (fact: Fact, partId: string, scheduleLayerId: string, root: string): Promise<void> => {
  const taken = await fact.tx.query<unknown[]>(
    `select from fact.layer_record r where r.part_id = $1 and r.schedule_layer_id = $2 and r.root <> $3 and ${standing('r')}`,
    [partId, scheduleLayerId, root],
  );
  if (taken.length > 0)
    throw new Conflict(
      'layer-recorded',
      'That layer is recorded already: correct or withdraw that record first.',
      '/set',
    );
};
