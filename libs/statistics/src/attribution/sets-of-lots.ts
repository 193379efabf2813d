/** A set of bad lots with its log likelihood. */
export interface Hypothesis {
  /** Places in the list of options, each of another class. */
  readonly options: readonly number[];
  /** Bad lots in all. */
  readonly size: number;
  /** Sum over the options of their logWays. */
  readonly logWays: number;
  readonly logLikelihood: number;
}

/**
 * Sets of bad lots in columns, a row each: there are tens of thousands under each of some twenty assumptions, and as
 * objects it was the making and forgetting of them that took the time.
 */
export class SetsOfLots {
  length = 0;
  sizes = new Uint32Array(FIRST);
  logWays = new Float64Array(FIRST);
  logLikelihoods = new Float64Array(FIRST);
  private options: Int32Array;

  /** @param width the most options in a set */
  constructor(readonly width: number) {
    this.options = new Int32Array(FIRST * width);
  }

  /** The option at a place of a set, from 0; -1 when it has fewer. */
  optionAt(row: number, place: number): number {
    return place < this.width ? (this.options[row * this.width + place] as number) : NONE;
  }

  /** How many options a set has. */
  countAt(row: number): number {
    let count = 0;
    while (this.optionAt(row, count) !== NONE) count += 1;
    return count;
  }

  /** Adds the set of no option. */
  addNone(logLikelihood: number): void {
    this.options.fill(NONE, 0, this.width);
    this.add(0, 0, logLikelihood);
  }

  /** Adds the set of a row of these or others, and one option more. */
  addGrown(from: SetsOfLots, row: number, added: number, figures: Omit<Hypothesis, 'options'>): void {
    if (this.length === this.sizes.length) this.grow();
    const start = this.length * this.width;
    let place = 0;
    for (let option = from.optionAt(row, 0); option !== NONE; option = from.optionAt(row, place)) {
      this.options[start + place] = option;
      place += 1;
    }
    this.options[start + place] = added;
    this.options.fill(NONE, start + place + 1, start + this.width);
    this.add(figures.size, figures.logWays, figures.logLikelihood);
  }

  /** Each set as an object. */
  listed(): readonly Hypothesis[] {
    return Array.from({ length: this.length }, (_, row) => ({
      options: Array.from({ length: this.countAt(row) }, (_each, place) => this.optionAt(row, place)),
      size: this.sizes[row] as number,
      logWays: this.logWays[row] as number,
      logLikelihood: this.logLikelihoods[row] as number,
    }));
  }

  private add(size: number, logWays: number, logLikelihood: number): void {
    this.sizes[this.length] = size;
    this.logWays[this.length] = logWays;
    this.logLikelihoods[this.length] = logLikelihood;
    this.length += 1;
  }

  private grow(): void {
    const doubled = <T extends Int32Array | Uint32Array | Float64Array>(own: T, into: T): T => {
      into.set(own);
      return into;
    };
    const rows = 2 * this.sizes.length;
    this.sizes = doubled(this.sizes, new Uint32Array(rows));
    this.logWays = doubled(this.logWays, new Float64Array(rows));
    this.logLikelihoods = doubled(this.logLikelihoods, new Float64Array(rows));
    this.options = doubled(this.options, new Int32Array(rows * this.width));
  }
}

const FIRST = 1024;
const NONE = -1;
