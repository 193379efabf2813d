/** Where on the hull claims are: on the skin unrolled, as shares of length and girth. */
export interface PlacesView {
  readonly says: string;
  readonly cannotSay: string;
  /** x from the transom to the stem, 0 to 1; y from starboard edge to port edge, -1 to 1. */
  readonly spots: readonly { readonly x: number; readonly y: number }[];
  readonly zones: readonly ZoneView[];
  /** The most striking group of zones; null without one. */
  readonly cluster: string | null;
}

/** A zone, from its least to its greatest x and y, with hulls affected in it. */
export interface ZoneView {
  readonly name: string;
  readonly from: { readonly x: number; readonly y: number };
  readonly to: { readonly x: number; readonly y: number };
  readonly hulls: number;
  readonly perArea: string;
  readonly inCluster: boolean;
}
