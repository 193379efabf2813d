import { CLAIM_PHOTOS } from '@hull-record/contracts';

/** The kinds of picture that a claim still lacks: HIN plate, whole side, zone with scale, close-up with ruler. */
export const photosAsked = (shown: readonly string[]): readonly string[] =>
  CLAIM_PHOTOS.filter((kind) => kind !== 'other' && !shown.includes(kind));
