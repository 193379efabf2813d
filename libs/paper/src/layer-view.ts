/** What a layer is made of, as drawn: each kind has its hatch everywhere. */
export type HatchKind = 'gel coat' | 'mat' | 'woven' | 'core' | 'putty' | 'board' | 'other';

/** What was found for one spot. A reading is "no limit" where the schedule sets none. */
export type Verdict = 'inside' | 'outside' | 'cannot be judged' | 'no limit';

/** One layer as made on one part, or as scheduled while it is to come (then most texts are null). */
export interface LayerView {
  /** Position in the schedule, such as "4". */
  readonly position: string;
  readonly code: string;
  readonly name: string;
  readonly hatch: HatchKind;
  readonly plies: string;
  readonly state: 'made' | 'to come';
  readonly when: string | null;
  /** Badge codes of those who made it. */
  readonly doneBy: readonly string[];
  readonly enteredBy: string | null;
  readonly climate: string | null;
  readonly note: string | null;
  readonly used: readonly UsedView[];
  readonly readings: readonly ReadingsView[];
  readonly verdicts: readonly VerdictView[];
  /** Who signed and when; null while unsigned or where nothing is to be signed. */
  readonly signature: string | null;
  /** The name of the hold point the layer ends in; null where it ends in none. */
  readonly holdPoint: string | null;
  readonly corrected: readonly string[];
}

/** An amount of a lot put into a layer, a joint or a repair. */
export interface UsedView {
  readonly lot: string;
  /** Its last day of use, such as 2026-10-09; null where it has none. */
  readonly lastDay?: string | null | undefined;
  /** Suppliers' lots behind it, with their fractions, such as "AR-60622-1 (81 %)". */
  readonly supplierLots: readonly string[];
  readonly material: string;
  readonly amount: string;
  /** weighed, metered, apportioned or as scheduled: the weakest on its path. */
  readonly basis: string;
  readonly corrected: boolean;
}

/** What was found when the layer or repair was judged by a rule of the trade. */
export interface VerdictView {
  readonly topic: string;
  readonly verdict: Verdict;
  readonly detail: string;
  readonly rule: string;
  readonly source: string;
  readonly corrected: boolean;
}

/** Readings of one kind, with what they were judged by. */
export interface ReadingsView {
  readonly what: string;
  readonly limits: string;
  readonly rule: string;
  readonly equipment: string;
  /** The readings on a line; left out where there is one reading, or none that is a number in one unit. */
  readonly plot?: ReadingsPlot | undefined;
  readonly rows: readonly ReadingView[];
}

/** Readings of one kind as numbers in one unit, with their limits. */
export interface ReadingsPlot {
  readonly unit: string;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly points: readonly { readonly value: number; readonly verdict: Verdict }[];
}

/** One reading at one spot; each spot is judged, not the mean. */
export interface ReadingView {
  readonly spot: string;
  readonly value: string;
  readonly place: string;
  readonly verdict: Verdict;
  /** What was decided about the reading, or why the verdict is in doubt; left out where there is nothing to say. */
  readonly note?: string | undefined;
  readonly byWhen: string;
}
