import type { Place, Skin } from '@hull-record/trade';

/**
 * From where the unrolled skin is seen; printed as it stands.
 *
 * Port is always drawn up. Seen from below the bow is then on the left, seen from above on the right: the outside of a
 * hull molding is seen from below, the outside of a deck from above.
 */
export type SeenFrom = 'outside, from below' | 'outside, from above' | 'inside, from above';

/** How a mark is drawn: bold ring, ring struck through, ring with a C flag, thin ring. */
export type MarkState = 'open' | 'repaired' | 'concession' | 'other';

/** A mark on the skin; `mark` is the defect's short name, such as D4. */
export interface MapMark {
  readonly mark: string;
  readonly place: Place;
  readonly state: MarkState;
}

/** The skin of a part with its marks, in millimetres of girth and station. */
export interface HullMapView {
  readonly skin: Skin;
  readonly seenFrom: SeenFrom;
  readonly marks: readonly MapMark[];
}
