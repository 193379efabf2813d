import type { Reach } from './reach-of-corrections.js';

/**
 * How much a correction works out before it answers. What reaches further is marked, and worked out by a job: nobody
 * waits for it, and nobody else in the plant does.
 */
export class AtOnce {
  constructor(
    readonly tankLots = 20,
    readonly places = 100,
  ) {}

  holds({ tankLots, places }: Reach): boolean {
    return tankLots.length <= this.tankLots && places.length <= this.places;
  }
}
