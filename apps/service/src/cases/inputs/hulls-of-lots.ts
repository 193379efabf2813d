import { LONG_STEP_BYTES, longStepAt, Numbers } from '../../platform/exposure/numbers.js';
import type { PackedLot } from '../../platform/exposure/read-packed.js';
import { PARTS_OF_WHOLE } from '../../platform/exposure/share.sql.js';
import { LONG_STEP } from '../../platform/exposure/steps.sql.js';
import type { LotInHulls } from './case-inputs.js';
import type { PartsOfHulls } from './judge-hulls.js';
import { Origins } from './origins.js';
import type { Room } from './room.js';

const NOWHERE = -1;

type Found = Pick<LotInHulls, 'hulls' | 'shares'>;

/**
 * Turns parts with a lot into hulls with it: those at risk, by place, each with its largest share up to its origin.
 *
 * `| 0` tells the engine that these are integers: eighteen million of them are gone through in a third of the time.
 */
export class HullsOfLots {
  /** Place of the hull that a part is in, by the number of the part; and the day of its origin. */
  private readonly placeOf: Int32Array;
  private readonly originOf: Int32Array;
  private readonly origins: Origins;
  /** Largest share by place, for one lot at a time; 0 where it is not. */
  private readonly found: Int32Array;
  private readonly readers = { numbers: new Numbers(), shares: new Numbers(), days: new Numbers() };
  private same = new Float64Array(0);
  private sameShare = 0;

  /**
   * @param origins day of the time origin of each hull, from 1970-01-01
   * @param least shares below it are left out, in parts of 1e9
   * @param room where lists of hulls are kept
   */
  constructor(
    { numbers, places }: PartsOfHulls,
    origins: readonly number[],
    private readonly least: number,
    private readonly room: Room,
  ) {
    const most = numbers.reduce((a, b) => Math.max(a, b), 0);
    this.placeOf = new Int32Array(most + 1).fill(NOWHERE);
    this.originOf = new Int32Array(most + 1);
    this.origins = new Origins(origins);
    this.found = new Int32Array(origins.length);
    for (let i = 0; i < numbers.length; i += 1) {
      const [number, place] = [numbers[i] as number, places[i] as number];
      this.placeOf[number] = place;
      this.originOf[number] = origins[place] as number;
    }
  }

  /** The lot in these hulls; null when it is in none of them. */
  ofPacked(packed: PackedLot): LotInHulls | 'needs days' | null {
    const { lot, supplierLot, material, family, share } = packed;
    if (share !== null && share < this.least) return null;
    if (this.firstIsLate(packed)) return 'needs days';
    const found = this.alone(packed) ?? this.inOrder(packed) ?? this.inAnyOrder(packed);
    if (found === 'needs days') return 'needs days';
    if (found.hulls.length === 0) return null;
    return { lot, supplierLot, material, family, hulls: found.hulls, shares: found.shares };
  }

  /** Whether its first part already cannot be told without days, which spares going through the others. */
  private firstIsLate({ parts, lastDay, days }: PackedLot): boolean {
    const first = parts[0] === LONG_STEP ? longStepAt(parts, 1) : (parts[0] ?? 0);
    return days === null && this.placeOf[first] !== NOWHERE && lastDay > (this.originOf[first] ?? Infinity);
  }

  /** Of a lot with one share whose hulls rise as its parts do, and came to their origin later: most are so. */
  private alone({ parts, share, lastDay }: PackedLot): Found | null {
    if (share === null) return null;
    const { placeOf } = this;
    const hulls = this.room.places.for(parts.length);
    let [at, number, count, last] = [0, 0, 0, NOWHERE];
    while (at < parts.length) {
      let step = parts[at] as number;
      at = (at + 1) | 0;
      if (step === LONG_STEP) {
        step = longStepAt(parts, at);
        at = (at + LONG_STEP_BYTES) | 0;
      }
      number = (number + step) | 0;
      if (number >= placeOf.length) break;
      const place = (placeOf[number] as number) | 0;
      if (place <= last) {
        if (place === last || place === NOWHERE) continue;
        return null;
      }
      hulls[count] = place;
      count = (count + 1) | 0;
      last = place;
    }
    if (count > 0 && lastDay > this.origins.leastIn(hulls[0] as number, last)) return null;
    return { hulls: this.room.places.take(count), shares: this.always(share, count) };
  }

  /** Of a lot whose hulls rise as its parts do; null when they do not. Without days, if each origin is later. */
  private inOrder(packed: PackedLot): Found | 'needs days' | null {
    const { share, lastDay } = packed;
    const { placeOf, originOf, least } = this;
    const { numbers, shares, days } = this.unpacked(packed);
    const hulls = this.room.places.for(numbers.length);
    const own = shares && this.room.shares.for(numbers.length);
    let [count, last] = [0, NOWHERE];
    for (let i = 0; i < numbers.length; i = (i + 1) | 0) {
      const number = (numbers[i] as number) | 0;
      if (number >= placeOf.length) break;
      const place = (placeOf[number] as number) | 0;
      if (place === NOWHERE) continue;
      const origin = (originOf[number] as number) | 0;
      if (lastDay > origin) {
        if (days === null) return 'needs days';
        if ((days[i] as number) > origin) continue;
      }
      if (place <= last) {
        if (place < last || shares !== null) return null;
        continue;
      }
      if (shares !== null && own !== null) {
        const its = (shares[i] as number) | 0;
        if (its < least) continue;
        own[count] = partOfWhole(its);
      }
      hulls[count] = place;
      count = (count + 1) | 0;
      last = place;
    }
    return {
      hulls: this.room.places.take(count),
      shares: share === null ? this.room.shares.take(count) : this.always(share, count),
    };
  }

  private inAnyOrder(packed: PackedLot): Found | 'needs days' {
    const { placeOf, originOf, found, least } = this;
    const { numbers, shares, days } = this.unpacked(packed);
    if (days === null) return 'needs days';
    let [count, low, high] = [0, found.length, NOWHERE];
    for (let i = 0; i < numbers.length; i += 1) {
      const number = numbers[i] as number;
      const place = number < placeOf.length ? (placeOf[number] as number) : NOWHERE;
      if (place === NOWHERE || (days[i] as number) > (originOf[number] as number)) continue;
      const share = shares === null ? (packed.share ?? 0) : (shares[i] as number);
      const known = found[place] as number;
      if (share < least || share <= known) continue;
      if (known === 0) count += 1;
      found[place] = share;
      if (place < low) low = place;
      if (place > high) high = place;
    }
    const hulls = new Uint32Array(count);
    const own = new Float64Array(count);
    for (let place = low, next = 0; place <= high; place += 1) {
      const share = found[place] as number;
      if (share === 0) continue;
      hulls[next] = place;
      own[next] = partOfWhole(share);
      next += 1;
      found[place] = 0;
    }
    return { hulls, shares: own };
  }

  private unpacked({ parts, shares, days }: PackedLot) {
    const { readers } = this;
    return {
      numbers: readers.numbers.of(parts),
      shares: shares && readers.shares.of(shares),
      days: days && readers.days.of(days),
    };
  }

  /** The same share many times. Most lots are alone in their layer wherever they are: one list of shares serves them all. */
  private always(share: number, count: number): Float64Array {
    if (share !== this.sameShare || count > this.same.length) {
      this.same = new Float64Array(Math.max(count, 2 * this.same.length)).fill(partOfWhole(share));
      this.sameShare = share;
    }
    return this.same.subarray(0, count);
  }
}

const partOfWhole = (share: number): number => Math.min(1, share / PARTS_OF_WHOLE);
