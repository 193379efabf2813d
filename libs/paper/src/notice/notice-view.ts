import type { PaperView } from '../papers/paper-view.js';

/** What a notice says: 46 USC 4310(d), 33 CFR 179.09. */
export interface NoticeText {
  readonly defect: string;
  readonly hazard: string;
  readonly measures: string;
  readonly undertaking: string;
  readonly manufacturer: string;
  readonly address: string;
  readonly make: string;
  readonly contact: string | null;
  /** Each model with the inclusive months of manufacture. */
  readonly models: readonly string[];
}

/** The letters of a notice, worded: everything that prints. */
export interface LettersView extends PaperView {
  readonly notice: string;
  readonly text: NoticeText;
  /** What each letter is, by what was decided. */
  readonly title: string;
  /** How many are written to, and who cannot be. */
  readonly counts: readonly (readonly [label: string, value: string])[];
  readonly letters: readonly LetterView[];
  /** Who decides, and that this is a draft. */
  readonly says: string;
}

/** One letter. */
export interface LetterView {
  /** Name and address, line by line. */
  readonly to: readonly string[];
  /** As whom they are written to, such as "first purchaser". */
  readonly as: string;
  readonly boats: readonly { readonly hull: string; readonly hin: string | null; readonly model: string }[];
}

/** A report to the authority, as a draft. */
export interface AuthorityReportView extends PaperView {
  readonly notice: string;
  readonly name: string;
  /** The rule that asks for it. */
  readonly source: string;
  readonly text: NoticeText;
  readonly facts: readonly (readonly [label: string, value: string])[];
  readonly chronology: readonly { readonly day: string; readonly what: string }[];
  /** What is not known yet, which the rule allows to come later with a reason and a date. */
  readonly missing: readonly string[];
  readonly says: string;
}
