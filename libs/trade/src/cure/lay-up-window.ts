import { NumberInvalid, requireNotNegative, requirePositive } from '../numbers.js';

/** When the next layer may go on: minutes after the end of the layer, of the lot's certificate or the data sheet. */
export interface LayUpWindow {
  readonly earliestMinutes: number;
  readonly latestMinutes: number;
}

/** The same as instants, ms since the epoch. */
export interface LayUpTimes {
  readonly earliest: number;
  readonly latest: number;
}

const MINUTE_MS = 60_000;

/**
 * The instants between which the next layer bonds to this one as a primary bond.
 *
 * Throws NumberInvalid when the window is no window. The times come from the supplier of the material ("within the
 * limits specified by the material supplier", class rule 3.2.5), never from here.
 */
export const layUpTimes = (endedAt: number, window: LayUpWindow): LayUpTimes => {
  requireNotNegative('earliest minutes', window.earliestMinutes);
  requirePositive('latest minutes', window.latestMinutes);
  if (window.latestMinutes < window.earliestMinutes)
    throw new NumberInvalid('latest minutes', window.latestMinutes, 'no less than the earliest');
  return {
    earliest: endedAt + window.earliestMinutes * MINUTE_MS,
    latest: endedAt + window.latestMinutes * MINUTE_MS,
  };
};

/**
 * How the next layer bonds by when it was begun: too early, primary, or secondary.
 *
 * After the latest time the layer before has cured, and what goes on is glued to it: a secondary bond, whose surface is
 * prepared first (after Gerr 2000 and Gibbs & Cox 1960, as restated by a builder's page). Both ends are primary.
 */
export const bondOf = (begunAt: number, times: LayUpTimes): 'too early' | 'primary' | 'secondary' => {
  if (begunAt < times.earliest) return 'too early';
  return begunAt > times.latest ? 'secondary' : 'primary';
};

/** Where an instant stands to the window, with the whole minutes that remain until the next change; null after it. */
export const windowCountdown = (
  now: number,
  times: LayUpTimes,
): { readonly state: 'wait' | 'open' | 'passed'; readonly minutes: number | null } => {
  const left = (until: number): number => Math.ceil((until - now) / MINUTE_MS);
  if (now < times.earliest) return { state: 'wait', minutes: left(times.earliest) };
  if (now <= times.latest) return { state: 'open', minutes: left(times.latest) };
  return { state: 'passed', minutes: null };
};
