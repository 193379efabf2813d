import type { DefectView, NonconformityView } from '../build-record-view.js';
import type { ReadingsView, VerdictView } from '../layer-view.js';
import type { PaperPart, PaperView } from '../papers/paper-view.js';

/** The hold points of one part, worded and rounded: everything the sheet prints. */
export interface HoldPointsView extends PaperView {
  readonly part: PaperPart;
  /** Outside in. */
  readonly holdPoints: readonly HoldPointView[];
  /** Open ones of the part that are about no layer. */
  readonly nonconformities: readonly NonconformityView[];
  /** Open ones of the part whose layer is not known. */
  readonly defects: readonly DefectView[];
}

/** One hold point, with all that is to be known before somebody signs it. */
export interface HoldPointView {
  readonly name: string;
  /** Such as "layer 4, Bulk laminate (L4)". */
  readonly layer: string;
  /** null while the layer is to come. */
  readonly made: {
    readonly when: string;
    /** Badge codes. */
    readonly doneBy: readonly string[];
    readonly enteredBy: string;
    readonly climate: string | null;
  } | null;
  readonly readings: readonly ReadingsView[];
  /** Readings that the schedule asks for and that are not complete, a sentence each. */
  readonly missing: readonly string[];
  readonly verdicts: readonly VerdictView[];
  /** Open ones of the layer. */
  readonly nonconformities: readonly NonconformityView[];
  /** Open ones of the layer. */
  readonly defects: readonly DefectView[];
  /** Who signed, when, and how far that is known; null while nobody has. */
  readonly signature: string | null;
}
