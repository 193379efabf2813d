import { now } from '../clock.js';
import { InvalidRequest } from '../refusals.js';

/** A device's clock may run ahead by this much, ms. */
const CLOCK_TOLERANCE_MS = 10 * 60_000;

/** @throws InvalidRequest when something is said to have happened that is still to come */
export const assertNotAhead = (instant: string | undefined, pointer: string): void => {
  if (instant !== undefined && Date.parse(instant) > now().getTime() + CLOCK_TOLERANCE_MS)
    throw new InvalidRequest([{ pointer, detail: 'lies in the future: check the clock of the device' }]);
};
