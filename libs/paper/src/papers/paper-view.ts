/** What every paper of the house says of itself. */
export interface PaperView {
  readonly plantName: string;
  /** The moment whose state is printed: an ISO 8601 instant, and the words for it in the plant's time zone. */
  readonly stateAsOf: { readonly instant: string; readonly text: string };
  /** A sentence when figures are being worked out anew after a correction; null while they are not. */
  readonly recomputing: string | null;
}

/** A part as papers of the shop name it; null hull and HIN where it has none. */
export interface PaperPart {
  readonly number: string;
  readonly kind: string;
  readonly hull: string | null;
  readonly hin: string | null;
  readonly model: string;
  readonly mold: string;
  readonly schedule: string;
  /** Why it was scrapped; null while it is not. */
  readonly scrapped: string | null;
}

/** What a paper is about: `name` such as "Lot report", `code` that of its subject, `of` what the code is, such as "lot". */
export interface PaperSubject {
  readonly name: string;
  readonly of: string;
  readonly code: string;
  /** What the paper is and what it is not, at the foot of every page. */
  readonly statement: string;
  /** Further words to find the file by. */
  readonly keywords: readonly string[];
}
