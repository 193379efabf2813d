import type { DayLot } from '@hull-record/contracts';
import type { NowLayer, NowPart } from './now.js';
import { windowFor } from './work-of.js';

/** Something that stops an act before it is done, as far as this tablet knows. */
export interface Stop {
  readonly rule:
    | 'expired'
    | 'held'
    | 'not released'
    | 'other material'
    | 'not known'
    | 'used up'
    | 'made already'
    | 'before'
    | 'unsigned'
    | 'window passed'
    | 'unidentified';
  /** The lot, layer or hold point that it is about. */
  readonly about: string;
  readonly detail: string;
}

/** What stops a layer from being begun on a part: what comes before it is not made or signed, or its time has passed. */
export const stopsOfLayer = (part: NowPart, layer: NowLayer, now: number): readonly Stop[] => {
  const { scheduled, record } = layer;
  if (record !== null) return [{ rule: 'made already', about: scheduled.code, detail: '' }];
  const before = part.layers.filter((other) => scheduled.predecessors.includes(other.scheduled.code));
  return [
    ...before.flatMap((other): Stop[] => {
      if (other.record === null) return [{ rule: 'before', about: other.scheduled.code, detail: other.scheduled.name }];
      const { holdPoint } = other.scheduled;
      const unsigned = holdPoint !== undefined && other.record.signature === null;
      return unsigned ? [{ rule: 'unsigned', about: other.scheduled.code, detail: holdPoint }] : [];
    }),
    ...(windowFor(part, layer, now)?.state === 'passed'
      ? [{ rule: 'window passed' as const, about: scheduled.code, detail: '' }]
      : []),
  ];
};

/** What stops a lot from being used in a layer on a day (yyyy-mm-dd, of the plant). */
export const stopsOfLot = (lot: DayLot, { scheduled }: NowLayer, today: string): readonly Stop[] => {
  const stops: Stop[] = [];
  const add = (rule: Stop['rule'], detail: string): unknown => stops.push({ rule, about: lot.code, detail });
  if (lot.expiresOn !== null && lot.expiresOn < today) add('expired', lot.expiresOn);
  if (lot.holds.length > 0) add('held', lot.holds.join('; '));
  if (lot.state !== 'released') add('not released', lot.state);
  if (lot.leftKg <= 0) add('used up', '');
  const allowed = scheduled.materials.map(({ material }) => material);
  if (!lot.materials.some((material) => allowed.includes(material))) add('other material', lot.materials.join(', '));
  return stops;
};
