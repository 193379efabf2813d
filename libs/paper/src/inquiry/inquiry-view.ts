import type { PaperView } from '../papers/paper-view.js';
import type { AheadView } from './ahead-view.js';
import type { ClassView, RowView } from './class-view.js';
import type { PlacesView } from './places-view.js';
import type { Said } from './said.js';
import type { TriangleView } from './triangle-view.js';

/** A look at a case, worded and rounded: everything the paper prints, and the numbers that its pictures draw. */
export interface InquiryView extends PaperView {
  readonly case: string;
  readonly title: string;
  /** That it was prepared at the direction of counsel; null when it was not. */
  readonly counsel: string | null;
  /** Which look this is, of how many that were taken. */
  readonly look: string;
  readonly verdict: string;
  /** Whether the settings were frozen after claims that they are tested by. */
  readonly exploratory: { readonly is: boolean; readonly says: string };
  readonly sentences: readonly string[];
  readonly triangle: TriangleView | null;
  /** Hulls that are compared, and those left out. */
  readonly hulls: readonly Said[];
  readonly settings: readonly Said[];
  /** How many classes were tested, and how. */
  readonly tests: string;
  /** The most likely first. */
  readonly classes: readonly ClassView[];
  readonly untestable: UntestableView;
  readonly cover: CoverView;
  /** What else hulls have in common. */
  readonly apart: readonly RowView[];
  readonly places: PlacesView | null;
  readonly ahead: AheadView | null;
  readonly next: readonly string[];
  readonly cannotSay: readonly string[];
  readonly methods: readonly MethodView[];
  /** Hashes and versions, and how to work the answer out again. */
  readonly again: readonly Said[];
}

/** Classes of which no figure can tell anything. */
export interface UntestableView {
  readonly says: string;
  readonly rows: readonly {
    readonly named: string;
    readonly hulls: string;
    readonly observed: string;
    readonly p: string;
  }[];
}

/** Classes that together go with most claims, taken one after the other. */
export interface CoverView {
  readonly steps: readonly {
    readonly named: string;
    readonly explains: string;
    readonly runnerUp: string;
  }[];
  readonly unexplained: string;
}

/** A method with what it does here and where it is described. */
export interface MethodView {
  readonly what: string;
  readonly how: string;
  readonly source: string;
}
