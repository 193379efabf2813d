import { count } from '../../word-values.js';

/** A chance with two digits that count, such as "0.00042" or "1.3e-9"; words where there is none. */
export const chance = (p: number | null): string => {
  if (p === null) return 'not told';
  if (p >= 0.9995) return '1';
  return p === 0 || p < 1e-5 ? p.toExponential(1).replace(/\.0e/, 'e') : String(Number(p.toPrecision(2)));
};

/** A ratio with three digits that count; without a bound where there is none. */
export const ratio = (value: number | null): string => {
  if (value === null) return 'without bound';
  return value >= 1_000 ? value.toExponential(1).replace('+', '') : String(Number(value.toPrecision(3)));
};

/** "12.5 %": a share with three digits that count. */
export const share = (value: number): string => `${Number((100 * value).toPrecision(3))} %`;

export const hulls = (n: number): string => count(n, 'hull');
