import type { DefectKind } from '../defect-kinds.js';
import { isBelow, requireNotNegative } from '../numbers.js';
import { toSi } from '../units.js';
import { FLAW_ACCEPTANCE, type FlawLevel, type FlawLimit, type FlawRow } from './acceptance.js';

/** A flaw as found: its largest size in the unit it was measured in, and how many in what area (mm2). */
export interface FoundFlaw {
  readonly kind: DefectKind;
  readonly size: number;
  readonly unit: 'mm' | 'in';
  readonly count?: { readonly found: number; readonly areaMm2: number };
}

export interface FlawVerdict {
  readonly verdict: 'accepted' | 'rejected' | 'cannot be judged';
  readonly reason: string;
  /** Limit in the unit of the flaw; null when none is permitted or none is known. */
  readonly limit: number | null;
  readonly unit: 'mm' | 'in';
  readonly source: string;
}

/**
 * Judges a flaw at a level of an acceptance table, in the unit it was measured in: 3.1 mm fails 3.0 mm and passes 1/8 in.
 *
 * The numbers are those of the table and no stop. A count in a larger area is compared as density; in a smaller one as it
 * stands, so that one is never too dense.
 */
export const judgeFlaw = (
  flaw: FoundFlaw,
  level: FlawLevel,
  table: readonly FlawRow[] = FLAW_ACCEPTANCE,
): FlawVerdict => {
  const row = table.find(({ kind }) => kind === flaw.kind);
  const about = { unit: flaw.unit, source: row?.source ?? 'no acceptance limit is on the table' };
  if (!row)
    return { verdict: 'cannot be judged', reason: 'The table has no row for this kind.', limit: null, ...about };
  if (!(flaw.size > 0) || !Number.isFinite(flaw.size))
    return { verdict: 'cannot be judged', reason: 'The size is no number above zero.', limit: null, ...about };
  if (flaw.count !== undefined && !isCount(flaw.count))
    return {
      verdict: 'cannot be judged',
      reason: 'The count or its area is no number above zero.',
      limit: null,
      ...about,
    };
  const limit = level === 'I' ? null : row[level];
  if (limit === null)
    return { verdict: 'rejected', reason: `None is permitted at level ${level}.`, limit: null, ...about };
  const largest = flaw.unit === 'mm' ? limit.mm : limit.inches;
  const reason = brokenBy(flaw, limit, largest);
  return {
    verdict: reason === undefined ? 'accepted' : 'rejected',
    reason: reason ?? 'Within the limits of the level.',
    limit: largest,
    ...about,
  };
};

const isCount = ({ found, areaMm2 }: NonNullable<FoundFlaw['count']>): boolean =>
  Number.isFinite(found) && found >= 0 && Number.isFinite(areaMm2) && areaMm2 > 0;

const brokenBy = ({ size, unit, count }: FoundFlaw, limit: FlawLimit, largest: number): string | undefined => {
  if (size > largest) return `${size} ${unit} is over ${largest} ${unit}.`;
  if (count === undefined || limit.count === undefined) return undefined;
  const { atMost, areaMm2 } = limit.count;
  const allowed = (atMost * count.areaMm2) / areaMm2;
  return isBelow(allowed, count.found) && count.found > atMost
    ? `${count.found} in ${count.areaMm2} mm2 are over ${atMost} in ${areaMm2} mm2.`
    : undefined;
};

/** Surface damage is typically under 2 mm (1/16 in) deep (E. Greene, Marine Composites, ch. 5). Depth in mm or in. */
export const isSurfaceDamage = (depth: number, unit: 'mm' | 'in'): boolean => {
  requireNotNegative('depth', depth);
  return unit === 'mm' ? depth < 2 : toSi(depth, 'in') < toSi(1 / 16, 'in');
};
