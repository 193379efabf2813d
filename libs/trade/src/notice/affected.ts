import { insideLookBack } from '../retention/look-back.js';
import type { NoticedBoat } from './follow-up.js';
import type { HullDisposition } from '../holds/held-hull.js';

/** A boat as a notice looks at it; days are YYYY-MM-DD. */
export interface ConcernedBoat {
  readonly leftPlant: boolean;
  /** When its manufacture ended; null: not known, which never leaves it out. */
  readonly builtOn: string | null;
}

/**
 * Whom a notice is about: `noticed`, `contained` (it has not left the place of manufacture, 46 USC 4310(b)), or `outside`
 * the ten-year look-back (46 USC 4310(c)(2)).
 *
 * Throws NotACalendarDate.
 */
export const concernOf = (
  { leftPlant, builtOn }: ConcernedBoat,
  discoveredOn: string,
): 'noticed' | 'contained' | 'outside' => {
  if (!leftPlant) return 'contained';
  return builtOn === null || insideLookBack(builtOn, discoveredOn) ? 'noticed' : 'outside';
};

/** What was seen of a boat, by all that was said of it, the newest last. A repair says that the defect was there. */
export const inspectionOf = (said: readonly HullDisposition[]): Pick<NoticedBoat, 'inspected' | 'corrected'> => {
  const defect = said.some((what) => what === 'found' || what === 'repaired');
  const looked = defect || said.includes('checked');
  const lastFound = said.lastIndexOf('found');
  return {
    inspected: defect ? 'defect' : looked ? 'none' : 'not yet',
    // A fault that was found after the repair is not corrected.
    corrected: said.lastIndexOf('repaired') > lastFound,
  };
};

/** Whether a first purchaser was notified: by any letter that did not come back. */
export const notifiedBy = (letters: readonly { readonly returned: boolean }[]): NoticedBoat['notified'] => {
  if (letters.length === 0) return 'not yet';
  return letters.every(({ returned }) => returned) ? 'returned' : 'yes';
};
