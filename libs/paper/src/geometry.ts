/** A point in points of paper, y down. */
export interface PaperPoint {
  readonly x: number;
  readonly y: number;
}

/** A rectangle in points of paper, y down. */
export interface Box extends PaperPoint {
  readonly width: number;
  readonly height: number;
}
