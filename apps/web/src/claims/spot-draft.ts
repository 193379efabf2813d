import type { ClaimedSpot } from '@hull-record/contracts';
import type { Place } from '@hull-record/trade';
import { typedNumber } from '../words/typed-number.js';

/** The figures of a spot, as typed. */
export const SPOT_FIGURES = ['lengthMm', 'widthMm', 'depthMm', 'counted', 'countedAreaM2'] as const;
type Figure = (typeof SPOT_FIGURES)[number];

/** A spot as it is entered: where, and how large. */
export interface SpotDraft {
  readonly place: Place | undefined;
  readonly figures: Readonly<Record<Figure, string>>;
}

export const NO_SPOT: SpotDraft = {
  place: undefined,
  figures: { lengthMm: '', widthMm: '', depthMm: '', counted: '', countedAreaM2: '' },
};

/** The spots that have a place, as they are sent; one that was begun and not placed is none. */
export const spotsOf = (drafts: readonly SpotDraft[]): { readonly spots: ClaimedSpot[] } => ({
  spots: drafts.flatMap(({ place, figures }) => {
    if (place === undefined) return [];
    const typed = SPOT_FIGURES.flatMap((name) => {
      const value = typedNumber(figures[name]);
      return value === undefined ? [] : [[name, value] as const];
    });
    return [{ place, ...Object.fromEntries(typed) }];
  }),
});
