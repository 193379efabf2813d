import { Numbers } from '../../platform/exposure/numbers.js';
import type { PackedLot } from '../../platform/exposure/read-packed.js';
import { PARTS_OF_WHOLE } from '../../platform/exposure/share.sql.js';
import type { LotInHulls } from './case-inputs.js';
import { Room } from './room.js';

const NOWHERE = -1;
/** A packed number has so many. */
const BYTES = 4;

type Found = Pick<LotInHulls, 'hulls' | 'shares'>;

const NO_SHARES = new Float64Array(0);

/** Turns parts with a lot into hulls with it: those at risk, by place, each with its largest share up to its origin. */
export class HullsOfLots {
  /** Place of the hull that a part is in, by the number of the part; and the day of its origin. */
  private readonly placeOf: Int32Array;
  private readonly originOf: Int32Array;
  /** The first day of an origin: of what was put in no later, none can have been too late. */
  private readonly firstOrigin: number;
  /** Largest share by place, for one lot at a time; 0 where it is not. */
  private readonly found: Int32Array;
  private readonly numbers = new Numbers();
  private readonly room = new Room();
  private same = new Float64Array(0);
  private sameShare = 0;

  /**
   * @param parts numbers of the parts of each hull
   * @param origins day of the time origin of each hull, from 1970-01-01
   * @param least shares below it are left out, in parts of 1e9
   */
  constructor(
    parts: readonly (readonly number[])[],
    origins: readonly number[],
    private readonly least: number,
  ) {
    const most = parts.reduce((highest, own) => own.reduce((a, b) => Math.max(a, b), highest), 0);
    this.placeOf = new Int32Array(most + 1).fill(NOWHERE);
    this.originOf = new Int32Array(most + 1);
    this.firstOrigin = origins.reduce((a, b) => Math.min(a, b), Infinity);
    this.found = new Int32Array(parts.length);
    parts.forEach((own, place) =>
      own.forEach((number) => {
        this.placeOf[number] = place;
        this.originOf[number] = origins[place] as number;
      }),
    );
  }

  /** The lot in these hulls; null when it is in none of them. */
  ofPacked(packed: PackedLot): LotInHulls | 'needs days' | null {
    const { lot, supplierLot, material, family, share } = packed;
    if (share !== null && share < this.least) return null;
    const numbers = this.numbers.of(packed.parts);
    const found = this.inOrder(numbers, packed) ?? (packed.days && this.inAnyOrder(numbers, packed, packed.days));
    if (found === null || found === 'needs days') return 'needs days';
    if (found.hulls.length === 0) return null;
    return { lot, supplierLot, material, family, hulls: found.hulls, shares: found.shares };
  }

  /** Of a lot whose hulls rise as its parts do, as nearly all; null when they do not. Without days, if each origin is later. */
  private inOrder(numbers: Int32Array, { share: one, shares, lastDay, days }: PackedLot): Found | 'needs days' | null {
    const { placeOf, originOf, least } = this;
    const late = lastDay > this.firstOrigin;
    const hulls = this.room.forPlaces(numbers.length);
    const own = shares === null ? NO_SHARES : this.room.forShares(numbers.length);
    let [count, last] = [0, NOWHERE];
    for (let i = 0; i < numbers.length; i += 1) {
      const number = numbers[i] as number;
      const place = number < placeOf.length ? (placeOf[number] as number) : NOWHERE;
      if (place === NOWHERE) continue;
      if (late && lastDay > (originOf[number] as number)) {
        if (days === null) return 'needs days';
        if (days.getInt32(i * BYTES) > (originOf[number] as number)) continue;
      }
      if (place <= last) {
        if (place < last || shares !== null) return null;
        continue;
      }
      if (shares !== null) {
        const share = shares.getInt32(i * BYTES);
        if (share < least) continue;
        own[count] = partOfWhole(share);
      }
      hulls[count] = place;
      count += 1;
      last = place;
    }
    return {
      hulls: this.room.takePlaces(count),
      shares: shares === null ? this.always(one ?? 0, count) : this.room.takeShares(count),
    };
  }

  private inAnyOrder(numbers: Int32Array, { share: one, shares }: PackedLot, days: DataView): Found {
    const { placeOf, originOf, found, least } = this;
    let [count, low, high] = [0, found.length, NOWHERE];
    for (let i = 0; i < numbers.length; i += 1) {
      const number = numbers[i] as number;
      const place = number < placeOf.length ? (placeOf[number] as number) : NOWHERE;
      if (place === NOWHERE || days.getInt32(i * BYTES) > (originOf[number] as number)) continue;
      const share = shares === null ? (one ?? 0) : shares.getInt32(i * BYTES);
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
