import type { LayerView, ReadingsView, UsedView, VerdictView } from './layer-view.js';
import type { HullMapView } from './hull-map-view.js';
import type { PhotoView } from './photo-view.js';

/**
 * The build record of one hull, worded and rounded: everything the paper prints.
 *
 * The renderer decides nothing. Every text comes with its unit, in the plant's time zone and in the reader's units;
 * people appear as badge codes or roles. Lists print in the order given.
 */
export interface BuildRecordView {
  readonly plantName: string;
  /** The builder's hull number, the permanent key of the record. */
  readonly hullNumber: string;
  /** The hull identification number as affixed or assigned; null while there is none. */
  readonly hin: HinView | null;
  readonly model: string;
  /** The moment whose state is printed: an ISO 8601 instant, and the words for it in the plant's time zone. */
  readonly stateAsOf: { readonly instant: string; readonly text: string };
  readonly complete: boolean;
  /** For whom it is drawn, and how people are told in it. */
  readonly cut: string;
  /** One sentence, such as "Not complete: 2 layers are to be made and the hull is not released." */
  readonly completeness: string;
  readonly lifeFacts: readonly LifeFactView[];
  readonly parts: readonly PartView[];
  readonly joints: readonly JointView[];
  /** Those of the hull itself and of the lots in it; those of a part stand with the part. */
  readonly nonconformities: readonly NonconformityView[];
  readonly equipment: readonly EquipmentView[];
  readonly corrections: readonly CorrectionView[];
  /** Cautions that go with what the paper describes, one sentence an entry. */
  readonly cautions: readonly string[];
  /** The rules and publications that readings and layers were judged by. */
  readonly sources: readonly string[];
}

/** A hull identification number and what its characters say, one statement an entry. */
export interface HinView {
  readonly text: string;
  readonly decoded: readonly string[];
  /** Where the rule puts the two numbers on the boat. */
  readonly placement: string;
}

/** A fact of the hull's life: started, demolded, HIN affixed, released, shipped, sold. */
export interface LifeFactView {
  readonly when: string;
  readonly what: string;
  readonly whereBy: string;
}

/** One molded piece with everything recorded about it. */
export interface PartView {
  readonly number: string;
  readonly kind: string;
  readonly mold: string;
  readonly schedule: string;
  /** When it was joined to the hull; null while it is not. */
  readonly joined: string | null;
  /** Outside in. */
  /** Readings of the part as a whole, such as its weight. */
  readonly readings: readonly ReadingsView[];
  readonly layers: readonly LayerView[];
  readonly defects: readonly DefectView[];
  readonly repairs: readonly RepairView[];
  readonly nonconformities: readonly NonconformityView[];
  /** Left out where the model has no skin geometry. */
  readonly map?: HullMapView | undefined;
}

/** A defect; `mark` is its short name on the hull map, such as D4. */
export interface DefectView {
  readonly mark: string;
  readonly kind: string;
  readonly place: string;
  readonly size: string;
  readonly layer: string;
  readonly state: string;
  /** Disposition, with the concession where there is one; null while undecided. */
  readonly disposition: string | null;
  readonly note: string | null;
  readonly verdicts: readonly VerdictView[];
  /** In the order in which they were added. */
  readonly photos: readonly PhotoView[];
}

/** A repair as done, with its acceptance; null acceptance while nobody accepted it. */
export interface RepairView {
  readonly mark: string;
  /** Marks of the defects it puts right. */
  readonly defects: readonly string[];
  readonly when: string;
  readonly procedure: string;
  readonly geometry: string;
  readonly plies: string;
  readonly used: readonly UsedView[];
  readonly readings: readonly ReadingsView[];
  readonly verdicts: readonly VerdictView[];
  readonly doneBy: readonly string[];
  /** Of one that was done elsewhere; null of one of the plant. */
  readonly outside: OutsideRepairView | null;
  readonly acceptance: string | null;
}

/** What is known of a repair that was done elsewhere: nobody of the plant witnessed it. */
export interface OutsideRepairView {
  readonly done: string;
  /** In words; empty when lots of the plant tell it. */
  readonly material: string;
  /** From whom it is known, with the evidence and who reported it. */
  readonly knownFrom: string;
  readonly note: string | null;
  readonly photos: string;
}

/** Something that broke a rule and was recorded all the same; null disposition while it is open. */
export interface NonconformityView {
  readonly rule: string;
  readonly detail: string;
  readonly when: string;
  readonly disposition: string | null;
}

/** Parts joined to the hull, with what went into the joint. */
export interface JointView {
  readonly what: string;
  readonly parts: string;
  readonly when: string;
  readonly doneBy: readonly string[];
  readonly enteredBy: string;
  readonly used: readonly UsedView[];
  readonly readings: readonly ReadingsView[];
  readonly note: string | null;
}

/** A correction of an earlier fact; both values stay on paper. */
export interface CorrectionView {
  readonly when: string;
  readonly what: string;
  readonly before: string;
  readonly after: string;
  readonly reason: string;
  readonly by: string;
}

/** Equipment that something was read or sprayed with, with its check state then. */
export interface EquipmentView {
  readonly code: string;
  readonly what: string;
  readonly lastUsed: string;
  /** Such as "good on 3 Jun 2026 (timed catch)". */
  readonly state: string;
  readonly suspect: boolean;
}
