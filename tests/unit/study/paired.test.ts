import { describe, expect, it } from '@jest/globals';
import { binomialLimits } from '@hull-record/statistics';
import { differenceLimits, mcNemar, notInferior } from '../../study/paired.js';

const pairs = (onlyFirst: number, onlySecond: number, all: number) => ({ onlyFirst, onlySecond, all });

describe('the arithmetic of the study', () => {
  // Tango 1998, Statistics in Medicine 17:891; Agresti and Min 2005, 24:729; Fagerland, Lydersen and Laake 2014, 33:2850.
  // As the tests of the R package ratesci quote them.
  it.each([
    ['Tango 1998, 32 pairs', pairs(9, 3, 32), 0.95, -0.027, 0.39],
    ['Tango 1998, 44 pairs of lenses', pairs(0, 1, 44), 0.9, -0.096, 0.037],
    ['Agresti and Min 2005', pairs(16, 8, 86), 0.95, -0.02, 0.207],
    ['Fagerland 2014, airways', pairs(1, 7, 21), 0.95, -0.517, -0.026],
  ])('has the published limits of a paired difference: %s', (_, given, level, lower, upper) => {
    const found = differenceLimits(given, level);
    expect(found.lower).toBeCloseTo(lower, 3);
    expect(found.upper).toBeCloseTo(upper, 3);
  });

  it('turns with the two ways', () => {
    const [one, other] = [differenceLimits(pairs(12, 5, 80)), differenceLimits(pairs(5, 12, 80))];
    expect(one.lower).toBeCloseTo(-other.upper, 9);
    expect(one.upper).toBeCloseTo(-other.lower, 9);
  });

  it("has McNemar's exact p: 2 (1 + 8) / 2^8 of one pair against seven, and 1 of none", () => {
    expect(mcNemar(pairs(1, 7, 21))).toBeCloseTo(18 / 256, 12);
    expect(mcNemar(pairs(0, 0, 21))).toBe(1);
  });

  it('calls a way not inferior only when the lower limit is above the margin', () => {
    expect(notInferior(pairs(10, 10, 2000), 0.03)).toBe(true);
    expect(notInferior(pairs(10, 10, 100), 0.03)).toBe(false);
    expect(notInferior(pairs(0, 80, 2000), 0.03)).toBe(false);
    expect(notInferior(pairs(0, 0, 10), 0.03)).toBe(false);
  });

  // Newcombe 1998, Statistics in Medicine 17:857, table I, Clopper and Pearson.
  it.each([
    [15, 148, 0.0578, 0.1617],
    [0, 20, 0, 0.1684],
    [1, 29, 0.0009, 0.1776],
  ])('has the published exact limits of %i in %i', (x, n, lower, upper) => {
    const found = binomialLimits(x, n);
    expect(found.lower).toBeCloseTo(lower, 4);
    expect(found.upper).toBeCloseTo(upper, 4);
  });
});
