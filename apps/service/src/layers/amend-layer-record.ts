import { Injectable } from '@nestjs/common';
import type { CorrectedValues } from '@hull-record/contracts';
import { Amendments } from '../platform/facts/amendments.js';
import { findPeople } from '../platform/facts/author.js';
import type { Fact } from '../platform/facts/fact.js';
import { insertVersion, readVersion } from '../platform/facts/new-version.js';
import { assertNotAhead } from '../platform/facts/not-ahead.js';
import { openNewlyBrokenAbout } from '../platform/facts/open-newly-broken.js';
import { standing } from '../platform/facts/standing.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { Conflict, InvalidRequest } from '../platform/refusals.js';
import { brokenLayerRules } from './broken-layer-rules.js';
import { climateColumns } from './climate-columns.js';
import { findScheduleLayer, readScheduleLayer } from '../platform/layers/find-schedule-layer.js';
import { judgeOrder } from './judge-order.js';
import { LayerRecordEntity } from './layer-record.entity.js';
import { moveDraws } from './move-draws.js';
import { moveNonconformities } from './move-nonconformities.js';

type SetLayer = Extract<CorrectedValues, { kind: 'layer record' }>;

/** Sets anew how a layer was made: part, layer, times, crew, climate. Its hold point must then be signed again. */
@Injectable()
export class AmendLayerRecord {
  constructor(amendments: Amendments) {
    amendments.of('layer record', async (fact, oldId, newId, set) => {
      const old = await readVersion(fact, LayerRecordEntity, oldId);
      const { partId, scheduleLayerId } = await whereOf(fact, old, set);
      const { startedAt, endedAt } = timesOf(set, old);
      const makers =
        set.doneBy === undefined
          ? undefined
          : [...(await findPeople(fact.tx, set.doneBy, (i) => `/set/doneBy/${i}`))].sort();
      await insertVersion(fact, LayerRecordEntity, oldId, newId, {
        ...{ partId, scheduleLayerId, startedAt, endedAt, makers },
        ...(set.climate === undefined ? {} : climateColumns(set.climate)),
        area: set.area,
        surfacePrepared: set.surfacePrepared,
        note: set.note,
      });
      await moveDraws(fact, old, { startedAt, endedAt });
      await moveNonconformities(fact, old.root, partId);
      await openBroken(fact, newId);
      await judgeOrder(fact, partId);
      if (partId !== old.partId) await judgeOrder(fact, old.partId);
    });
  }
}

const timesOf = (set: SetLayer, old: LayerRecordEntity): Pick<LayerRecordEntity, 'startedAt' | 'endedAt'> => {
  assertNotAhead(set.startedAt, '/set/startedAt');
  assertNotAhead(set.endedAt, '/set/endedAt');
  const startedAt = set.startedAt === undefined ? old.startedAt : new Date(set.startedAt);
  const endedAt = set.endedAt === undefined ? old.endedAt : new Date(set.endedAt);
  if (endedAt >= startedAt) return { startedAt, endedAt };
  throw new InvalidRequest([{ pointer: '/set/endedAt', detail: 'must not be before startedAt' }]);
};

/** What the layer as it really was broke, and the layer as it was recorded did not. */
const openBroken = async (fact: Fact, id: string): Promise<void> => {
  const made = await readVersion(fact, LayerRecordEntity, id);
  const { partId, root, scheduleLayerId, startedAt, climateEntered } = made;
  const layer = await readScheduleLayer(fact.tx, scheduleLayerId);
  const used = await fact.tx.query<{ lot_id: string }[]>(
    `select distinct u.lot_id from fact.used u where u.into_id = $1 and ${standing('u')}`,
    [root],
  );
  const request = { startedAt: startedAt.toISOString(), climate: (climateEntered ?? undefined) as SetLayer['climate'] };
  const lots = used.map((row) => row.lot_id);
  const broken = await brokenLayerRules(fact.tx, { partId, layer, request, lots });
  await openNewlyBrokenAbout(fact, broken, { aboutKind: 'layer', aboutId: root, partId });
};

const whereOf = async (
  fact: Fact,
  old: LayerRecordEntity,
  set: SetLayer,
): Promise<Pick<LayerRecordEntity, 'partId' | 'scheduleLayerId'>> => {
  if (set.part === undefined && set.layer === undefined) return old;
  const partId =
    set.part === undefined ? old.partId : await findByCode(fact.tx, 'part', fact.author.plantId, set.part, '/set/part');
  const { code } = await readScheduleLayer(fact.tx, old.scheduleLayerId);
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
