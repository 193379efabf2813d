import { cumulativeHazard, type Weibull } from '../weibull/weibull.js';

/** Hulls of one age without a claim so far; an age below 0 is the time until launch. */
export interface Running {
  readonly age: number;
  readonly hulls: number;
}

/** The time ahead, and the age at which the warranty ends; both in the unit of the ages. */
export interface Ahead {
  readonly horizon: number;
  readonly warrantyEnd?: number;
}

/** The chance that a hull without a claim at its age has one within the time ahead, while under warranty. */
export const chanceAhead = (fit: Weibull, age: number, { horizon, warrantyEnd = Infinity }: Ahead): number => {
  const until = Math.max(age, Math.min(age + horizon, warrantyEnd));
  return 0 - Math.expm1(cumulativeHazard(fit, age) - cumulativeHazard(fit, until));
};

/** Expected first claims within the time ahead. */
export const expectedClaims = (fit: Weibull, running: readonly Running[], ahead: Ahead): number =>
  running.reduce((total, { age, hulls }) => total + hulls * chanceAhead(fit, age, ahead), 0);

/** Expected first claims in each of a number of steps ahead, such as months. */
export const claimsByStep = (
  fit: Weibull,
  running: readonly Running[],
  { step, steps, warrantyEnd = Infinity }: { step: number; steps: number; warrantyEnd?: number },
): readonly number[] => {
  const upTo = Array.from({ length: steps + 1 }, (_, i) =>
    expectedClaims(fit, running, { horizon: i * step, warrantyEnd }),
  );
  return upTo.slice(1).map((total, i) => total - (upTo[i] as number));
};
