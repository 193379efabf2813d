import type { DayPart, DaySheet } from '@hull-record/contracts';
import type { MadeBy } from '../outbox/entry.js';

type MadeLayer = NonNullable<DayPart['layers'][number]['record']>;

/** A layer as made, as this tablet knows it: also what waits here to be sent. */
export interface NowRecord extends Omit<MadeLayer, 'id'> {
  /** Its id; of one that waits, the entry that will make it. */
  readonly id: string | MadeBy;
  readonly waits: boolean;
}

export interface NowLayer {
  readonly scheduled: DayPart['layers'][number]['scheduled'];
  readonly record: NowRecord | null;
}

export interface NowPart extends Omit<DayPart, 'layers'> {
  readonly layers: readonly NowLayer[];
}

/** The day as this tablet knows it: the sheet of the service, with what was entered here since. */
export interface Day extends Omit<DaySheet, 'parts'> {
  readonly parts: readonly NowPart[];
}

export const sameRecord = (a: string | MadeBy, b: string | MadeBy): boolean =>
  typeof a === 'string' || typeof b === 'string' ? a === b : a.entry === b.entry && a.part === b.part;
