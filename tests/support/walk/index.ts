export type { WalkFacts } from './facts.js';
export { add, compare, divide, fromDecimal, multiply, ONE, rational, sum, ZERO } from './rational.js';
export type { Rational } from './rational.js';
export { toNumber } from './to-number.js';
export { walkComposition } from './walk-composition.js';
export { walkHullsWith } from './walk-hulls-with.js';
export type { HullWith, PartWith } from './walk-hulls-with.js';
export { walkLotsIn } from './walk-lots-in.js';
export type { LotIn } from './walk-lots-in.js';
