import { windowCountdown } from '@hull-record/trade';
import type { NowLayer, NowPart, NowRecord } from './now.js';

/** What is to be done on a part, and whether work stands still until it is. */
export interface Work {
  readonly part: NowPart;
  readonly layer: NowLayer;
  readonly what: 'sign' | 'read' | 'read again' | 'make';
  readonly still: boolean;
  /** Of readings: what is read, and how many spots are missing or outside. */
  readonly reading: string | null;
  readonly count: number;
  /** Of a layer to be made: the time in which it bonds to the layer before. */
  readonly window: { readonly state: 'wait' | 'open' | 'passed'; readonly minutes: number | null } | null;
}

type Required = NowLayer['scheduled']['readings'][number];

/** The newest reading of each spot: what was read again counts by what it is now. */
export const spotsOf = (record: NowRecord, what: string): readonly NowRecord['readings'][number][] => {
  const bySpot = new Map<number, NowRecord['readings'][number]>();
  for (const reading of record.readings) if (reading.what === what) bySpot.set(reading.spot, reading);
  return [...bySpot.values()].sort((a, b) => a.spot - b.spot);
};

/** What is to be done on the parts of the day: first where work stands still, then what has the least time left. */
export const workOf = (parts: readonly NowPart[], now: number): readonly Work[] =>
  parts
    .flatMap((part) => part.layers.flatMap((layer) => onLayer(part, layer, now)))
    .sort((a, b) => Number(b.still) - Number(a.still) || urgency(a) - urgency(b));

const urgency = ({ window }: Work): number => (window?.state === 'open' ? (window.minutes ?? 1e6) : 1e6 + 1);

const onLayer = (part: NowPart, layer: NowLayer, now: number): readonly Work[] => {
  const base = { part, layer, reading: null, count: 0, window: null };
  const { record, scheduled } = layer;
  if (record === null) {
    if (!isNext(part, layer)) return [];
    const window = windowFor(part, layer, now);
    return [{ ...base, what: 'make', still: window?.state === 'passed', window }];
  }
  const followed = part.layers.some(
    (other) => other.record !== null && other.scheduled.predecessors.includes(scheduled.code),
  );
  const toSign = scheduled.holdPoint !== undefined && record.signature === null;
  return [
    ...scheduled.readings.flatMap((required) => toRead(base, required, record)),
    ...(toSign ? [{ ...base, what: 'sign' as const, still: !followed }] : []),
  ];
};

const toRead = (
  base: Pick<Work, 'part' | 'layer' | 'window'>,
  { what, spots }: Required,
  record: NowRecord,
): Work[] => {
  const taken = spotsOf(record, what);
  const outside = taken.filter(({ verdict }) => verdict === 'outside').length;
  const missing = Math.max(0, spots - taken.length);
  const of = (kind: 'read' | 'read again', count: number, still: boolean): Work[] =>
    count === 0 ? [] : [{ ...base, what: kind, still, reading: what, count }];
  return [...of('read again', outside, true), ...of('read', missing, false)];
};

/** Whether all that has to be made before a layer is made. */
export const isNext = (part: NowPart, { scheduled, record }: NowLayer): boolean =>
  record === null &&
  scheduled.predecessors.every((code) => !!part.layers.find((other) => other.scheduled.code === code)?.record);

/** Where now stands to the time in which a layer bonds to those before it; null when no window is known. */
export const windowFor = (part: NowPart, { scheduled }: NowLayer, now: number): Work['window'] => {
  const windows = scheduled.predecessors.flatMap((code) => {
    const found = part.layers.find((other) => other.scheduled.code === code)?.record?.nextLayer;
    return found ? [found] : [];
  });
  if (windows.length === 0) return null;
  const earliest = Math.max(...windows.map(({ from }) => Date.parse(from)));
  const latest = Math.min(...windows.map(({ until }) => (until === null ? Infinity : Date.parse(until))));
  return windowCountdown(now, { earliest, latest });
};
