import { smallStore } from './small-store.js';

/** By how many ms the service's clock is ahead of this device's, as last compared. */
const offset = smallStore<number>('hull-record.clock', 0);

/** The clocks of tablets differ from the service's: times are told by the service's, as far as it is known here. */
export const clock = {
  /**
   * Compares the clocks, when an answer has just come that names the service's time.
   *
   * What the answer took on its way makes this device a little late, never early: what is entered after a sign-in is
   * after its beginning.
   */
  compared: (serviceTime: string): void => offset.set(Math.round(Date.parse(serviceTime) - Date.now())),
  offsetMs: (): number => offset.get(),
  /** Now by the service's clock, ms since 1970. */
  now: (): number => Date.now() + offset.get(),
  instant: (): string => new Date(clock.now()).toISOString(),
};
