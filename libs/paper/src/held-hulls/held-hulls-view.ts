import type { PaperView } from '../papers/paper-view.js';

/** The hulls that a hold reaches, worded and rounded: everything the paper prints. */
export interface HeldHullsView extends PaperView {
  /** What is on hold, such as "Lot VE-118". */
  readonly thing: string;
  readonly kind: string;
  readonly reason: string;
  readonly placed: string;
  /** How far it reaches, and why it was narrowed; the oldest first. */
  readonly scopes: readonly string[];
  /** How it ended; null while it is in force. */
  readonly ended: string | null;
  /** Counts in a sentence. */
  readonly summary: string;
  /** Every hull that it reaches is disposed of. */
  readonly complete: boolean;
  readonly reached: readonly HeldHullView[];
  /** On the list of when it was placed, and reached no more. */
  readonly out: readonly HeldHullView[];
}

/** A hull, or a part that is in none. */
export interface HeldHullView {
  readonly hull: string;
  readonly hin: string | null;
  readonly model: string;
  readonly share: string;
  readonly where: string;
  /** Day on which it left the place of manufacture; null: it did not. */
  readonly left: string | null;
  readonly atHold: string;
  /** What was said of it, the oldest first. */
  readonly said: readonly string[];
  readonly disposed: boolean;
}
