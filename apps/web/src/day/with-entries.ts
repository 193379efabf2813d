import type { DaySheet } from '@hull-record/contracts';
import { isUnit, judgeSpot, layUpTimes, type Limits } from '@hull-record/trade';
import type { Entry, MadeBy } from '../outbox/entry.js';
import { sameRecord, type Day, type NowLayer, type NowPart, type NowRecord } from './now.js';

interface SpotEntered {
  readonly value?: string;
  readonly lastWet?: string;
  readonly nextDry?: string;
  readonly readsAgain?: string;
}
interface ReadingsEntered {
  readonly what: string;
  readonly unit: string;
  readonly spots: readonly SpotEntered[];
}
interface LayersEntered {
  readonly layer: string;
  readonly endedAt: string;
  readonly doneBy: readonly string[];
  readonly parts: readonly { readonly part: string }[];
}

/** The sheet with what this tablet entered and the sheet does not have yet, each in the order of writing. */
export const withEntries = (sheet: DaySheet, entries: readonly Entry[]): Day => ({
  ...sheet,
  parts: entries.reduce<readonly NowPart[]>(
    (parts, entry) => parts.map((part) => withEntry(part, entry)),
    sheet.parts.map((part) => ({
      ...part,
      layers: part.layers.map(({ scheduled, record }) => ({
        scheduled,
        record: record && { ...record, waits: false },
      })),
    })),
  ),
});

const withEntry = (part: NowPart, entry: Entry): NowPart => {
  if (!entry.lanes.includes(part.number) || entry.state === 'aside') return part;
  return { ...part, layers: part.layers.map((layer) => layerWith(part, layer, entry)) };
};

const layerWith = (part: NowPart, layer: NowLayer, entry: Entry): NowLayer => {
  if (entry.path === '/api/layers') return madeBy(part, layer, entry);
  const { record } = layer;
  const about = entry.parameters['layer'];
  if (record === null || about === undefined || !sameRecord(record.id, about)) return layer;
  if (entry.path === '/api/layers/:layer/readings') return { ...layer, record: readBy(layer, record, entry) };
  if (entry.path === '/api/layers/:layer/signatures') {
    const signature = { by: entry.body.enteredBy, at: entry.body.happenedAt, identity: 'waits' };
    return { ...layer, record: { ...record, signature } };
  }
  return layer;
};

const madeBy = (part: NowPart, layer: NowLayer, { id, body }: Entry): NowLayer => {
  const { layer: code, parts, endedAt, doneBy } = body as unknown as LayersEntered;
  if (layer.record !== null || layer.scheduled.code !== code) return layer;
  if (!parts.some((each) => each.part === part.number)) return layer;
  const made: MadeBy = { entry: id, part: part.number };
  const record = { id: made, endedAt, doneBy: [...doneBy], nextLayer: windowOf(layer, endedAt), readings: [] };
  return { ...layer, record: { ...record, signature: null, waits: true } };
};

const windowOf = ({ scheduled: { layUpWindow } }: NowLayer, endedAt: string): NowRecord['nextLayer'] => {
  if (layUpWindow === undefined) return null;
  const { earliest, latest } = layUpTimes(Date.parse(endedAt), layUpWindow);
  const at = (ms: number): string => new Date(ms).toISOString();
  return { from: at(earliest), until: at(latest), source: 'Window of the laminate schedule.' };
};

const readBy = (layer: NowLayer, record: NowRecord, { id, body }: Entry): NowRecord => {
  const { what, unit, spots } = body as unknown as ReadingsEntered;
  // The service has it, and its answer was lost on the way.
  if (record.readings.some((reading) => reading.id === id)) return record;
  const limits = layer.scheduled.readings.find((required) => required.what === what)?.limits;
  let next = Math.max(0, ...record.readings.filter((reading) => reading.what === what).map(({ spot }) => spot));
  const taken = spots.map((spot, i) => {
    const again = record.readings.find((reading) => reading.id === spot.readsAgain);
    next += again === undefined ? 1 : 0;
    const value = spot.value ?? spot.lastWet ?? '';
    const below = spot.nextDry ?? null;
    const verdict = verdictOf(value, below, unit, limits);
    return { id: i === 0 ? id : `${id}/${i}`, what, spot: again?.spot ?? next, value, below, unit, verdict };
  });
  return { ...record, readings: [...record.readings, ...taken] };
};

/** The verdict on a reading by the limits of the schedule: the same rule that the service judges by. */
export const verdictOf = (value: string, below: string | null, unit: string, limits: Limits | undefined): string => {
  if (limits === undefined) return 'no limit';
  if (!isUnit(unit) || value === '') return 'cannot be judged';
  return judgeSpot({ low: Number(value), high: below === null ? undefined : Number(below), unit }, limits).verdict;
};
