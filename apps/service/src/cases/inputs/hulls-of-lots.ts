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
  /** Place of the hull that a part is in, by the number of the part. */
  private readonly placeOf: Int32Array;
  private readonly originDays: Int32Array;
  /** Largest share by place, for one lot at a time; 0 where it is not. */
  private readonly found: Int32Array;
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
    parts.forEach((own, place) => own.forEach((number) => (this.placeOf[number] = place)));
    this.originDays = Int32Array.from(origins);
    this.found = new Int32Array(parts.length);
  }

  /** The lot in these hulls; null when it is in none of them. */
  ofPacked(packed: PackedLot): LotInHulls | 'needs days' | null {
    const { lot, supplierLot, material, family } = packed;
    const one = packed.shares.byteLength === BYTES ? packed.shares.getInt32(0) : null;
    if (one !== null && one < this.least) return null;
    const found = this.inOrder(one, packed) ?? (packed.days && this.inAnyOrder(one, packed, packed.days));
    if (found === null || found === 'needs days') return 'needs days';
    if (found.hulls.length === 0) return null;
    return { lot, supplierLot, material, family, hulls: found.hulls, shares: found.shares };
  }

  /** Of a lot whose hulls rise as its parts do, as nearly all; null when they do not. Without days, if each origin is later. */
  private inOrder(one: number | null, { parts, shares, lastDay, days }: PackedLot): Found | 'needs days' | null {
    const { placeOf, originDays, least } = this;
    const end = parts.byteLength;
    const hulls = this.room.forPlaces(end / BYTES);
    const own = one === null ? this.room.forShares(end / BYTES) : NO_SHARES;
    let [count, last] = [0, NOWHERE];
    for (let at = 0; at < end; at += BYTES) {
      const number = parts.getInt32(at, false);
      const place = number < placeOf.length ? (placeOf[number] as number) : NOWHERE;
      if (place === NOWHERE) continue;
      const origin = originDays[place] as number;
      if (lastDay > origin) {
        if (days === null) return 'needs days';
        if (days.getInt32(at, false) > origin) continue;
      }
      if (place <= last) {
        if (place < last || one === null) return null;
        continue;
      }
      if (one === null) {
        const share = shares.getInt32(at, false);
        if (share < least) continue;
        own[count] = partOfWhole(share);
      }
      hulls[count] = place;
      count += 1;
      last = place;
    }
    return {
      hulls: this.room.takePlaces(count),
      shares: one === null ? this.room.takeShares(count) : this.always(one, count),
    };
  }

  private inAnyOrder(one: number | null, { parts, shares }: PackedLot, days: DataView): Found {
    const { placeOf, originDays, found, least } = this;
    const end = parts.byteLength;
    let [count, low, high] = [0, found.length, NOWHERE];
    for (let at = 0; at < end; at += BYTES) {
      const number = parts.getInt32(at, false);
      const place = number < placeOf.length ? (placeOf[number] as number) : NOWHERE;
      if (place === NOWHERE || days.getInt32(at, false) > (originDays[place] as number)) continue;
      const share = one ?? shares.getInt32(at, false);
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
