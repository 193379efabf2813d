import type { FoundHold } from '../platform/holds/find-hold.js';
import { Conflict } from '../platform/refusals.js';

/** @throws Conflict `lifted-already` when the hold was lifted or closed */
export const assertOpen = ({ ended }: FoundHold): void => {
  if (ended) throw new Conflict('lifted-already', 'This hold is lifted or closed already: place another one.');
};
