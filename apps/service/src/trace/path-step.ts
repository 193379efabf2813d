/** One lot on the way from a supplier to a boat. */
export interface PathStep {
  readonly lot: string;
  readonly origin: string;
}
