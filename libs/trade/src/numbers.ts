import { TradeError } from './errors.js';

/** A number that a rule of the trade cannot work with: not finite, or outside what it can be. Data: `name`, `value`. */
export class NumberInvalid extends TradeError {
  readonly code = 'number-invalid';

  constructor(name: string, value: number, must: string) {
    super(`${name} is ${value}; it must be ${must}.`, { name, value });
  }
}

/** Returns the value, or throws NumberInvalid when it is not finite. */
export const requireFinite = (name: string, value: number): number => {
  if (!Number.isFinite(value)) throw new NumberInvalid(name, value, 'a finite number');
  return value;
};

/** Returns the value, or throws NumberInvalid when it is not finite or not above zero. */
export const requirePositive = (name: string, value: number): number => {
  if (requireFinite(name, value) <= 0) throw new NumberInvalid(name, value, 'more than zero');
  return value;
};

/** Returns the value, or throws NumberInvalid when it is not finite or is below zero. */
export const requireNotNegative = (name: string, value: number): number => {
  if (requireFinite(name, value) < 0) throw new NumberInvalid(name, value, 'zero or more');
  return value;
};

/** Returns the value, or throws NumberInvalid when it is not strictly between two bounds. */
export const requireBetween = (name: string, value: number, above: number, below: number): number => {
  if (!(requireFinite(name, value) > above && value < below))
    throw new NumberInvalid(name, value, `more than ${above} and less than ${below}`);
  return value;
};

/** Relative difference under which two numbers count as equal: far above the noise of arithmetic, far below any gauge. */
export const NOISE = 1e-12;

/** Whether a number is below another by more than the noise of arithmetic: what is worked out to a limit has met it. */
export const isBelow = (a: number, b: number): boolean =>
  a < b && !(b - a <= NOISE * Math.max(Math.abs(a), Math.abs(b)));
