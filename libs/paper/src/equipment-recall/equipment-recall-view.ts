import type { PaperView } from '../papers/paper-view.js';

/** What is to be looked at again because equipment was found unfit, worded and rounded: everything the paper prints. */
export interface EquipmentRecallView extends PaperView {
  readonly equipment: string;
  readonly kind: string;
  readonly description: string;
  /** The oldest first. */
  readonly checks: readonly EquipmentCheckLine[];
  /** The oldest first; one for each run of bad checks of one kind. */
  readonly windows: readonly RecallWindowView[];
  /** What the list rests on. */
  readonly source: string;
}

/** A check of the equipment. */
export interface EquipmentCheckLine {
  readonly when: string;
  readonly what: string;
  /** What was found, with its limits. */
  readonly found: string;
  readonly good: boolean;
  readonly by: string;
  readonly note: string | null;
  /** What was decided of a bad check; null while nothing was. */
  readonly disposition: string | null;
}

/** A time in which the equipment may have been unfit. */
export interface RecallWindowView {
  /** What was checked. */
  readonly what: string;
  readonly opens: string;
  readonly foundBad: string;
  readonly closes: string;
  readonly readings: readonly RecalledView[];
  /** What was sprayed or dispensed. */
  readonly drawn: readonly RecalledView[];
}

/** A reading taken, or material sprayed, in the window; its value stays as it is. */
export interface RecalledView {
  readonly part: string;
  readonly hull: string;
  /** Layer, repair or joint with the spot of a reading. */
  readonly place: string;
  readonly what: string;
  readonly value: string;
  readonly when: string;
  readonly by: string;
  /** What was decided of it by itself; null while nothing was. */
  readonly disposition: string | null;
}
