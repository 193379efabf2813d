/** Of so many hulls the least day is kept. */
const TOGETHER = 256;

/** Days of time origins by place, for whoever asks whether a day is before all of many. */
export class Origins {
  private readonly leasts: Int32Array;

  constructor(days: readonly number[]) {
    this.leasts = new Int32Array(Math.ceil(days.length / TOGETHER)).fill(2 ** 31 - 1);
    for (const [place, day] of days.entries()) {
      const at = Math.floor(place / TOGETHER);
      if (day < (this.leasts[at] as number)) this.leasts[at] = day;
    }
  }

  /** A day that none of the hulls from one place to another comes before: the least of theirs or of some beside them. */
  leastIn(from: number, to: number): number {
    let least = Infinity;
    for (let at = Math.floor(from / TOGETHER); at <= Math.floor(to / TOGETHER); at += 1)
      least = Math.min(least, this.leasts[at] as number);
    return least;
  }
}
