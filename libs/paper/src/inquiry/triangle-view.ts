/** Claims by the month in which a hull was begun and its months in service. */
export interface TriangleView {
  readonly rows: readonly {
    /** YYYY-MM. */
    readonly built: string;
    /** From the first month in service on; hulls watched in it, and claims. */
    readonly cells: readonly { readonly claims: number; readonly atRisk: number }[];
  }[];
  /** What the months in service are counted from. */
  readonly since: string;
}
