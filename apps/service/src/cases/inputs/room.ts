/** So many numbers are made room for at once: a list of its own for each of thousands of lots takes longer to make than to fill. */
const AT_ONCE = 1 << 18;

/** Room for lists of places and shares that are filled before it is known how long they come to be. */
export class Room {
  private places = new Uint32Array(0);
  private placesTaken = 0;
  private shares = new Float64Array(0);
  private sharesTaken = 0;

  /** A list of at least so many, to be filled from its beginning; it is anybody's until it is taken. */
  forPlaces(most: number): Uint32Array {
    if (this.placesTaken + most > this.places.length) {
      this.places = new Uint32Array(Math.max(most, AT_ONCE));
      this.placesTaken = 0;
    }
    return this.places.subarray(this.placesTaken);
  }

  /** The first so many of the list, for good. */
  takePlaces(count: number): Uint32Array {
    this.placesTaken += count;
    return this.places.subarray(this.placesTaken - count, this.placesTaken);
  }

  forShares(most: number): Float64Array {
    if (this.sharesTaken + most > this.shares.length) {
      this.shares = new Float64Array(Math.max(most, AT_ONCE));
      this.sharesTaken = 0;
    }
    return this.shares.subarray(this.sharesTaken);
  }

  takeShares(count: number): Float64Array {
    this.sharesTaken += count;
    return this.shares.subarray(this.sharesTaken - count, this.sharesTaken);
  }
}
