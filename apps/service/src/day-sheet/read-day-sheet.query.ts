import { Injectable } from '@nestjs/common';
import type { DayPart, DaySheet } from '@hull-record/contracts';
import { DataSource, type EntityManager } from 'typeorm';
import { personNow } from '../platform/access/call.js';
import { rolesAt } from '../platform/access/roles.sql.js';
import { now } from '../platform/clock.js';
import { readAsOne } from '../platform/database/read-as-one.js';
import { standing } from '../platform/facts/standing.js';
import { plantRulesAt } from '../platform/rules/plant-rules.sql.js';
import { type NextLayer, windowsOf } from '../platform/rules/lay-up-window.js';
import {
  loadLayerRecords,
  loadParts,
  loadReadings,
  NOW,
  type LayerRow,
  type PartRow,
  type ReadingRow,
} from '../platform/views/making.js';
import { PARTS_IN_WORK } from './parts-in-work.sql.js';
import { GAUGES, GUNS, LOTS, MATERIALS } from './stock.sql.js';

const PEOPLE = `
  select p.badge, ${rolesAt('p.root', 'now()')} as roles from fact.person p where ${standing('p')} order by p.badge`;

type Lot = Omit<DaySheet['lots'][number], 'happenedAt'> & { readonly happenedAt: Date };

/** Past this a data sheet names no latest time. */
const NO_END = Date.UTC(2_300, 0);

/** What a station needs for its day, in one answer that a tablet keeps. */
@Injectable()
export class ReadDaySheet {
  constructor(private readonly db: DataSource) {}

  run(): Promise<DaySheet> {
    return readAsOne(this.db, async (tx) => {
      const lots = await tx.query<Lot[]>(LOTS);
      return {
        at: now().toISOString(),
        marginRule: (await plantRulesAt(tx, personNow().plantId, now())).marginRule,
        people: await tx.query<DaySheet['people']>(PEOPLE),
        materials: await tx.query<DaySheet['materials']>(MATERIALS),
        parts: await partsOf(tx),
        lots: lots.map((lot) => ({ ...lot, happenedAt: lot.happenedAt.toISOString() })),
        gauges: await tx.query<DaySheet['gauges']>(GAUGES),
        guns: await tx.query<DaySheet['guns']>(GUNS),
      };
    });
  }
}

const partsOf = async (tx: EntityManager): Promise<DayPart[]> => {
  const ids = (await tx.query<{ id: string }[]>(PARTS_IN_WORK)).map(({ id }) => id);
  const parts = await loadParts(tx, ids, NOW);
  const records = await loadLayerRecords(tx, ids, NOW);
  const readings = await loadReadings(
    tx,
    records.map(({ root }) => root),
    NOW,
  );
  const windows = new Map<string, NextLayer>();
  for (const id of ids) for (const [root, window] of await windowsOf(tx, id)) windows.set(root, window);
  const inOrder = ids.flatMap((id) => parts.find((part) => part.id === id) ?? []);
  return inOrder.map((part) => toDayPart(part, { records, readings, windows }));
};

interface Making {
  readonly records: readonly LayerRow[];
  readonly readings: readonly ReadingRow[];
  readonly windows: ReadonlyMap<string, NextLayer>;
}

const toDayPart = ({ id, number, kind, hull, model, mold, layers }: PartRow, making: Making): DayPart => ({
  ...{ number, kind, hull, model, mold },
  layers: layers.map(({ id: layer, ...scheduled }) => {
    const row = making.records.find((record) => record.part_id === id && record.schedule_layer_id === layer);
    return { scheduled, record: row === undefined ? null : toMadeLayer(row, making) };
  }),
});

const toMadeLayer = (row: LayerRow, { readings, windows }: Making): DayPart['layers'][number]['record'] => {
  const window = windows.get(row.root);
  return {
    id: row.root,
    endedAt: row.ended_at.toISOString(),
    doneBy: row.done_by,
    nextLayer: window === undefined ? null : toNextLayer(window),
    readings: readings
      .filter((reading) => reading.of_id === row.root)
      .map(({ root, what, spot, value, below, unit, verdict }) => ({
        ...{ id: root, what, spot, value, below, unit, verdict },
      })),
    signature:
      row.signed_by === null || row.signed_at === null
        ? null
        : { by: row.signed_by, at: row.signed_at.toISOString(), identity: row.signature_identity ?? 'stated' },
  };
};

const toNextLayer = ({ times: { earliest, latest }, source }: NextLayer) => ({
  from: new Date(earliest).toISOString(),
  until: latest > NO_END ? null : new Date(latest).toISOString(),
  source,
});
