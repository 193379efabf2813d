import { requirePositive, requireNotNegative } from '../numbers.js';
import { type D714Grade } from '../blister.js';

/** Blistering after ISO 4628-2: quantity and size, each 0 to 5, written such as "2(S2)". A larger number is worse. */
export interface Iso4628Grade {
  readonly quantity: 0 | 2 | 3 | 4 | 5;
  readonly size: 0 | 2 | 3 | 4 | 5;
}

/** Where the crosswalk comes from: it helps to read old reports and stops nothing. */
export const ISO_4628_SOURCE = 'ISO 4628-2 Annex A (from memory, confirm against the standard)';

const SIZES = { 8: 2, 6: 3, 4: 4, 2: 5 } as const;
const QUANTITIES = { F: 2, M: 3, MD: 4, D: 5 } as const;

/** The ISO 4628-2 grade that a D714 grade corresponds to (from memory). */
export const iso4628Of = (grade: D714Grade): Iso4628Grade =>
  grade.size === 10 ? { quantity: 0, size: 0 } : { quantity: QUANTITIES[grade.frequency], size: SIZES[grade.size] };

/** The D714 grade that an ISO 4628-2 grade corresponds to; undefined when one number is 0 and the other is not. */
export const d714Of = ({ quantity, size }: Iso4628Grade): D714Grade | undefined => {
  if (quantity === 0 || size === 0) return quantity === size ? { size: 10 } : undefined;
  const sizes = { 2: 8, 3: 6, 4: 4, 5: 2 } as const;
  const frequencies = { 2: 'F', 3: 'M', 4: 'MD', 5: 'D' } as const;
  return { size: sizes[size], frequency: frequencies[quantity] };
};

/** Writes a grade as ISO 4628-2 reports it, such as "2(S2)" (form from memory). */
export const formatIso4628 = ({ quantity, size }: Iso4628Grade): string => `${quantity}(S${size})`;

/**
 * Size class of a blister by its diameter (mm): S3 up to 0.5 mm, S4 to 5 mm, S5 over (ISO 4628-1 Table 2; from memory).
 *
 * What is only just visible (S2) or only under a lens (S1) is no matter of millimetres, so the class is at least S3.
 */
export const sizeClassOf = (diameterMm: number): 'S3' | 'S4' | 'S5' => {
  requirePositive('diameter', diameterMm);
  if (diameterMm <= 0.5) return 'S3';
  return diameterMm <= 5 ? 'S4' : 'S5';
};

/** Blisters per square metre of a counted area (m2). */
export const blistersPerM2 = (count: number, areaM2: number): number =>
  requireNotNegative('count', count) / requirePositive('area', areaM2);
