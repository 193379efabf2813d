import { TooManyTries } from '../../platform/access/access-refusals.js';

const WINDOW_MS = 60_000;
/** Checks from one address in a minute. */
const FROM_ONE = 30;
/** Each check that finds nothing takes this much longer than the one before, up to the most, ms. */
const STEP_MS = 150;
const MOST_MS = 3_000;
/** So many addresses are remembered; beyond, the oldest are forgotten. */
const ADDRESSES = 10_000;

interface Counted {
  since: number;
  asked: number;
  missed: number;
}

/** Slows down who tries codes: by the address that asks. What was tried is not kept. */
export class CheckThrottle {
  private readonly counted = new Map<string, Counted>();

  constructor(private readonly time: () => number = () => performance.now()) {}

  /** Counts a check. @throws TooManyTries */
  count(from: string): void {
    const now = this.time();
    const before = this.counted.get(from);
    const counted = before && now - before.since < WINDOW_MS ? before : { since: now, asked: 0, missed: 0 };
    counted.asked += 1;
    this.counted.delete(from);
    this.counted.set(from, counted);
    if (this.counted.size > ADDRESSES) this.counted.delete(this.counted.keys().next().value as string);
    if (counted.asked > FROM_ONE) throw new TooManyTries(Math.ceil((counted.since + WINDOW_MS - now) / 1_000));
  }

  /** How long the answer that nothing was found has to wait, ms. */
  missed(from: string): number {
    const counted = this.counted.get(from);
    if (!counted) return STEP_MS;
    counted.missed += 1;
    return Math.min(MOST_MS, counted.missed * STEP_MS);
  }
}
