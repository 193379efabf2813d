import { z } from 'zod';
import * as statistics from '@hull-record/statistics';
import { anyNumber, check } from '../check.js';
import { attributionOf } from './attribution-case.js';

const numbers = z.array(anyNumber);
const level = z.enum(['I', 'II', 'III']);
const plan = z.strictObject({ n: anyNumber, c: anyNumber, dphu: anyNumber });
const lot = z.strictObject({ N: anyNumber, D: anyNumber, n: anyNumber, c: anyNumber });

/** Checks of sampling, of places on the hull and of attribution to lots. */
export const STATISTICS_OF_LOTS = {
  iso2859_code_letter: check(
    'statistics',
    'letter and sample size of a lot',
    { lot_size: numbers, level },
    ({ lot_size, level: by }) => {
      const found = lot_size.map((size) => statistics.codeLetter(size, by));
      return { letter: found.map(({ letter }) => letter), n: found.map(({ n }) => n) };
    },
  ),
  iso2859_single_normal: check(
    'statistics',
    'acceptance and rejection numbers of letter and limit',
    { cells: z.array(z.tuple([z.string(), anyNumber])) },
    ({ cells }) => ({
      ac_re: cells.map(([letter, limit]) => {
        const { accept } = statistics.normalPlan(letter, limit);
        return [accept, accept + 1];
      }),
    }),
  ),
  poisson_and_hypergeometric_oc: check(
    'statistics',
    'chance to accept, by faults a hundred units and of one lot',
    { poisson: z.array(plan), hyper: z.array(lot) },
    ({ poisson, hyper }) => ({
      poisson: poisson.map(({ n, c, dphu }) => statistics.acceptedByFaults({ n, accept: c }, dphu / 100)),
      hyper: hyper.map(({ N, D, n, c }) => statistics.acceptedOfLot({ n, accept: c }, { total: N, bad: D })),
    }),
  ),
  csr_quadrat_chisq: check('statistics', 'evenness of counts of squares', { counts: numbers }, ({ counts }) => {
    const found = statistics.quadratTest(counts);
    return { chisq: found.chiSquare, df: found.degrees, p_two_sided_2min: found.pTwoSided, p_upper: found.pUpper };
  }),
  clark_evans: check(
    'statistics',
    'distance to nearest neighbours; the window is left, right, bottom, top',
    { x: numbers, y: numbers, window: z.tuple([anyNumber, anyNumber, anyNumber, anyNumber]) },
    ({ x, y, window: [left, right, bottom, top] }) => ({
      R_naive: statistics.clarkEvans(
        x.map((each, i) => ({ x: each, y: y[i] ?? NaN })),
        (right - left) * (top - bottom),
      ),
    }),
  ),
  scan_llr: check(
    'statistics',
    'log likelihood ratio of a window',
    {
      poisson: z.array(z.strictObject({ c: anyNumber, E: anyNumber, C: anyNumber })),
      bernoulli: z.strictObject({ c: anyNumber, n: anyNumber, C: anyNumber, N: anyNumber }),
    },
    ({ poisson, bernoulli: { c, n, C, N } }) => ({
      poisson: poisson.map((window) => statistics.poissonRatio(window.c, window.E, window.C)),
      bernoulli: statistics.bernoulliRatio(c, n, C, N),
    }),
  ),
  lot_attribution: check(
    'statistics',
    'lots associated with claims of hulls that were watched equally long',
    {
      hulls: anyNumber,
      claim_hulls: numbers,
      lot_to_hulls: z.record(z.string(), numbers),
      noisy_or: z.strictObject({ prior_per_lot: anyNumber, theta: anyNumber, leak: anyNumber }),
    },
    attributionOf,
  ),
} as const;
