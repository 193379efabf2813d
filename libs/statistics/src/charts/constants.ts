import gammaln from '@stdlib/math-base-special-gammaln';
import { InputInvalid } from '../errors.js';
import { requireCount } from '../numbers.js';

/** Mean and standard deviation of the range of 2 to 25 standard normal values, by numerical integration. */
const RANGES: readonly (readonly [d2: number, d3: number])[] = [
  [1.1283791671, 0.8525024664],
  [1.6925687506, 0.888368004],
  [2.058750746, 0.8798082028],
  [2.3259289473, 0.8640819411],
  [2.5344127212, 0.8480396861],
  [2.7043567512, 0.8332053356],
  [2.8472006121, 0.8198314898],
  [2.9700263244, 0.8078342746],
  [3.0775054617, 0.7970506735],
  [3.1728727038, 0.7873146205],
  [3.2584552797, 0.7784783412],
  [3.3359803541, 0.7704162021],
  [3.4067631082, 0.7630230956],
  [3.4718268899, 0.7562114297],
  [3.5319827861, 0.7499080894],
  [3.5878839618, 0.744051784],
  [3.6400637579, 0.7385908534],
  [3.6889630232, 0.7334814955],
  [3.7349501196, 0.7286863457],
  [3.7783358298, 0.7241733407],
  [3.8193846434, 0.7199148084],
  [3.8583234233, 0.7158867355],
  [3.8953481485, 0.7120681751],
  [3.9306292195, 0.7084407659],
];

/** Factors of control charts for subgroups of one size. */
export interface ChartConstants {
  readonly d2: number;
  readonly d3: number;
  readonly c4: number;
  readonly A2: number;
  readonly A3: number;
  readonly B3: number;
  readonly B4: number;
  readonly D3: number;
  readonly D4: number;
}

/**
 * The factors for subgroups of n, 2 to 25 (ISO 7870-2, ASTM E2587, which print three decimals of them).
 *
 * A2 = 3/(d2 sqrt n), A3 = 3/(c4 sqrt n), D = 1 -+ 3 d3/d2, B = 1 -+ 3 sqrt(1 - c4^2)/c4, none below 0. Throws InputInvalid.
 */
export const chartConstants = (n: number): ChartConstants => {
  const range = RANGES[requireCount('n', n, 2) - 2];
  if (!range) throw new InputInvalid('n', n, 'at most 25');
  const [d2, d3] = range;
  const c4 = meanOfDeviation(n);
  const [byRange, byDeviation] = [(3 * d3) / d2, (3 * Math.sqrt(1 - c4 * c4)) / c4];
  return {
    d2,
    d3,
    c4,
    A2: 3 / (d2 * Math.sqrt(n)),
    A3: 3 / (c4 * Math.sqrt(n)),
    B3: Math.max(0, 1 - byDeviation),
    B4: 1 + byDeviation,
    D3: Math.max(0, 1 - byRange),
    D4: 1 + byRange,
  };
};

/** c4: the mean of the standard deviation of n standard normal values, sqrt(2/(n-1)) G(n/2)/G((n-1)/2). */
export const meanOfDeviation = (n: number): number =>
  Math.sqrt(2 / (n - 1)) * Math.exp(gammaln(n / 2) - gammaln((n - 1) / 2));
