/** How much a class stands out: drawn as a shape, and always said in a word beside it. */
export type Standing = 'strong' | 'suggestive' | 'none';

/** A ratio with its limits; null where it has no bound or cannot be told. */
export interface RatioView {
  readonly ratio: number | null;
  readonly lower: number | null;
  readonly upper: number | null;
}

/** The figures that hulls with something in common are compared by. */
export interface RowView {
  readonly named: string;
  /** What kind of thing it is, and where in the hull. */
  readonly family: string;
  /** Exposed hulls with a claim, of all exposed; then how many were expected, and over how many hull-years. */
  readonly observed: string;
  readonly expected: string;
  /** Observed over expected, for the picture and in words. */
  readonly ratio: RatioView;
  readonly ratioText: string;
  readonly limits: string;
  readonly odds: string;
  readonly p: string;
  readonly q: string;
  readonly standing: Standing;
  readonly crude: CrudeView;
}

/** The table of hulls that disregards age and build period. */
export interface CrudeView {
  /** With a claim and without, of the exposed and of the others. */
  readonly exposed: string;
  readonly others: string;
  readonly p: string;
  /** That it differs from the stratified test, and which holds; null when they agree. */
  readonly differs: string | null;
}

/** Lots that are in the same hulls: one suspect. */
export interface ClassView extends RowView {
  readonly members: readonly MemberView[];
  /** That several lots are in the same hulls; null of a class of one lot. */
  readonly together: string | null;
  /** Others in nearly the same hulls; null when there are none. */
  readonly nearly: string | null;
  readonly adjusted: string;
  readonly posterior: string;
  readonly dose: string;
  readonly shares: string;
  /** Claims of hulls that hold at least so much. */
  readonly atShares: readonly { readonly from: string; readonly says: string }[];
}

/** A lot in one kind of layer. */
export interface MemberView {
  readonly lot: string;
  readonly supplierLot: string;
  readonly material: string;
  readonly family: string;
}
