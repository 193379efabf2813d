import type { PaperView } from '../papers/paper-view.js';

/** Where a lot went, or where what is in hulls came from: columns from left to right, and the ways between them. */
export interface TraceView extends PaperView {
  readonly of: 'lot' | 'hulls';
  /** The lot, or the hulls with commas. */
  readonly code: string;
  readonly identity: readonly (readonly [label: string, value: string | null])[];
  /** Where it is, in a sentence. */
  readonly says: string;
  /** That more is left out than is printed; null when nothing is. */
  readonly leftOut: string | null;
  readonly columns: readonly TraceColumn[];
  readonly links: readonly { readonly from: string; readonly to: string; readonly kg: number }[];
  readonly assumes: string;
  readonly rows: readonly TraceRowView[];
}

/** Things of one kind, those with the most kilograms first. */
export interface TraceColumn {
  readonly title: string;
  readonly nodes: readonly TraceNodeView[];
}

/** A lot, hull or part; `kg` of what is traced, null where it only possibly is. */
export interface TraceNodeView {
  readonly id: string;
  readonly code: string;
  readonly kg: number | null;
}

/** What the table says of a lot, hull or part. */
export interface TraceRowView {
  readonly code: string;
  readonly what: string;
  readonly kg: string;
  readonly share: string;
  readonly basis: string;
  readonly now: string;
}
