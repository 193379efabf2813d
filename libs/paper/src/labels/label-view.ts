/** One label in words. Any text prints; what no font has prints as its code point. */
export interface LabelView {
  /** What the square code says, ASCII. */
  readonly path: string;
  /** What kind of thing it is on, such as "Lot" or "Drum". */
  readonly kind: string;
  /** The code by which people know the thing, printed large and always whole. */
  readonly code: string;
  /** What the thing is, in bold; cut short with … where there is no room. Empty: nothing. */
  readonly title: string;
  /** More about it, a line each, the most needed first; each is cut short like the title. */
  readonly details: readonly string[];
  /** Printed whole under the others; null: none. */
  readonly caution: string | null;
}

/** Labels in the order in which they are printed. */
export interface LabelsView {
  readonly plantName: string;
  readonly labels: readonly LabelView[];
  /** Places of the first page that stay empty. */
  readonly skip: number;
}
