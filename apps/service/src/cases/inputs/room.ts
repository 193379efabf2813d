/** So many numbers are made room for at once: a list of its own for each of thousands of lots takes longer to make than to fill. */
const AT_ONCE = 1 << 18;

interface List<T> {
  readonly length: number;
  subarray(from: number, to?: number): T;
}

/**
 * Memory that nobody uses at the moment, for whoever needs some next: a look at a large plant fills a hundred megabytes, and
 * to have them made anew and cleared away afterwards takes a fifth of its time. What is above a limit is given back.
 */
class Spare<T extends List<T>> {
  private readonly kept: T[] = [];

  constructor(
    private readonly most: number,
    readonly make: (length: number) => T,
  ) {}

  take(): T {
    return this.kept.pop() ?? this.make(AT_ONCE);
  }

  give(pieces: readonly T[]): void {
    this.kept.push(...pieces.filter(({ length }) => length === AT_ONCE).slice(0, this.most - this.kept.length));
  }
}

/** At most 64 MB of each. */
const PLACES = new Spare(64, (length) => new Uint32Array(length));
const SHARES = new Spare(32, (length) => new Float64Array(length));

/** Room for lists that are filled before it is known how long they come to be. */
class Pieces<T extends List<T>> {
  private pieces: T[] = [];
  private taken = 0;

  constructor(private readonly spare: Spare<T>) {}

  /** A list of at least so many, to be filled from its beginning; it is anybody's until it is taken. */
  for(most: number): T {
    const piece = this.pieces.at(-1);
    if (piece !== undefined && this.taken + most <= piece.length) return piece.subarray(this.taken);
    const added = most > AT_ONCE ? this.spare.make(most) : this.spare.take();
    this.pieces.push(added);
    this.taken = 0;
    return added.subarray(0);
  }

  /** The first so many of the list, as long as the room is not left. */
  take(count: number): T {
    this.taken += count;
    return (this.pieces.at(-1) as T).subarray(this.taken - count, this.taken);
  }

  leave(): void {
    this.spare.give(this.pieces);
    this.pieces = [];
  }
}

/** Room for places of hulls and for shares. */
export class Room {
  readonly places = new Pieces(PLACES);
  readonly shares = new Pieces(SHARES);

  /** Leaves the room to others: whoever has a list that was taken from it must not read it any more. */
  leave(): void {
    this.places.leave();
    this.shares.leave();
  }
}
