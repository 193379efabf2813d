import type { PackedLot } from '../../platform/exposure/read-packed.js';
import { PARTS_OF_WHOLE } from '../../platform/exposure/share.sql.js';
import type { LotInHulls } from './case-inputs.js';

const NOWHERE = -1;

/** Turns parts with a lot into hulls with it: those at risk, by place, each with its largest share up to its origin. */
export class HullsOfLots {
  /** Place of the hull that a part is in, by the number of the part. */
  private readonly placeOf: Int32Array;
  private readonly originDays: Int32Array;
  /** Largest share by place, for one lot at a time; 0 where it is not. */
  private readonly found: Int32Array;

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

  /** The lot in these hulls; none when it is in none of them. */
  ofPacked({ parts, days, shares, ...lot }: PackedLot): readonly LotInHulls[] {
    const { placeOf, originDays, found, least } = this;
    const one = shares.length === 1;
    let [count, low, high] = [0, found.length, NOWHERE];
    for (let i = 0; i < parts.length; i += 1) {
      const number = parts[i] as number;
      const place = number < placeOf.length ? (placeOf[number] as number) : NOWHERE;
      if (place === NOWHERE || (days[i] as number) > (originDays[place] as number)) continue;
      const share = shares[one ? 0 : i] as number;
      const known = found[place] as number;
      if (share < least || share <= known) continue;
      if (known === 0) count += 1;
      found[place] = share;
      if (place < low) low = place;
      if (place > high) high = place;
    }
    if (count === 0) return [];
    const hulls = new Uint32Array(count);
    const own = new Float64Array(count);
    for (let place = low, next = 0; place <= high; place += 1) {
      const share = found[place] as number;
      if (share === 0) continue;
      hulls[next] = place;
      own[next] = Math.min(1, share / PARTS_OF_WHOLE);
      next += 1;
      found[place] = 0;
    }
    return [{ ...lot, hulls, shares: own }];
  }
}
