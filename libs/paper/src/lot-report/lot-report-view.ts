import type { NonconformityView } from '../build-record-view.js';
import type { ReadingsView, VerdictView } from '../layer-view.js';
import type { PaperView } from '../papers/paper-view.js';

/**
 * The report of one lot, worded and rounded: everything the paper prints.
 *
 * Every text comes with its unit, in the plant's time zone; people appear as badge codes. Lists print in the order given.
 */
export interface LotReportView extends PaperView {
  readonly lot: string;
  /** One sentence, such as "Released: certificate checked". */
  readonly state: string;
  /** Whether it may be used. */
  readonly released: boolean;
  /** What the lot is, as label and value; those without a value are left out. */
  readonly identity: readonly (readonly [label: string, value: string | null])[];
  readonly certificate: readonly (readonly [name: string, value: string])[];
  /** Limits that the certificate names. */
  readonly certified: readonly (readonly [what: string, limits: string])[];
  /** What became of it, the oldest first: states, holds, retests, counts, losses. */
  readonly history: readonly LotEventView[];
  readonly containers: readonly ContainerLineView[];
  readonly madeOf: readonly MadeOfView[];
  /** What the shares rest on; null of a lot that is not made of others. */
  readonly assumes: string | null;
  readonly readings: readonly ReadingsView[];
  readonly verdicts: readonly VerdictView[];
  readonly nonconformities: readonly NonconformityView[];
  readonly hulls: readonly HoldingHullView[];
  /** Hulls that may hold it, and why that is not known; null where there are none. */
  readonly possibly: { readonly why: string; readonly hulls: readonly HoldingHullView[] } | null;
  readonly lotsMade: readonly LotMadeView[];
  /** Kilograms of the balance with their name, then a sentence that judges it. */
  readonly balance: readonly (readonly [what: string, kg: string])[];
  readonly balanced: string;
}

/** Something that happened to a lot. */
export interface LotEventView {
  readonly when: string;
  readonly what: string;
  readonly why: string;
  readonly by: string;
}

/** A drum, box or roll of the lot. */
export interface ContainerLineView {
  readonly label: string;
  readonly kind: string;
  readonly amount: string;
  readonly left: string;
  readonly place: string;
  readonly state: string;
}

/** A received lot behind the lot, with its share of the mass. */
export interface MadeOfView {
  readonly lot: string;
  readonly supplierLot: string;
  readonly material: string;
  readonly role: string;
  readonly share: string;
}

/** A hull that holds some of the lot; a part in no hull stands for itself. */
export interface HoldingHullView {
  /** Such as "86-1", or "part 86-D, in no hull". */
  readonly hull: string;
  readonly hin: string | null;
  /** Kilograms with unit, or words where they are not known. */
  readonly kg: string;
  readonly shareOfHull: string;
  readonly largestShare: string;
  readonly basis: string;
  readonly now: string;
  readonly places: readonly HoldingPlaceView[];
}

/** A layer, joint, repair or touch-up that holds some of the lot. */
export interface HoldingPlaceView {
  readonly part: string;
  readonly place: string;
  readonly role: string;
  readonly kg: string;
  /** Of all that has the same role in this place. */
  readonly share: string;
  readonly basis: string;
  readonly when: string;
}

/** A bucket, kit or tank fill that the lot went into. */
export interface LotMadeView {
  readonly lot: string;
  readonly origin: string;
  readonly amount: string;
  readonly basis: string;
  readonly when: string;
}
