import { z } from 'zod';
import * as statistics from '@hull-record/statistics';
import { anyNumber, check } from '../check.js';
import { ends } from './statistics-tables.js';

const numbers = z.array(anyNumber);
const CONSTANTS = ['d2', 'd3', 'c4', 'A2', 'D3', 'D4', 'B3', 'B4'] as const;
const fromOne = (places: readonly number[]): readonly number[] => places.map((place) => place + 1);

const rules = (zs: readonly number[]): object => {
  const beyond = (count: number, of: number, distance: number): readonly number[] =>
    fromOne(statistics.runsOf(zs, { kind: 'beyond', count, of, distance }));
  return {
    beyond3: beyond(1, 1, 3),
    '2of3beyond2': beyond(2, 3, 2),
    '4of5beyond1': beyond(4, 5, 1),
    run8: beyond(8, 8, 0),
    run9: beyond(9, 9, 0),
    trend6: fromOne(statistics.runsOf(zs, { kind: 'trend', count: 6 })),
  };
};

/** Checks of control charts and capability. */
export const STATISTICS_OF_CHARTS = {
  control_chart_constants: check('statistics', 'factors of control charts', { n: numbers }, ({ n }) => {
    const each = n.map(statistics.chartConstants);
    return Object.fromEntries(CONSTANTS.map((name) => [name, each.map((constants) => constants[name])]));
  }),
  individuals_mr: check('statistics', 'chart of single values', { x: numbers }, ({ x }) => {
    const [handbook, exact] = [statistics.individualsChart(x, 1.128), statistics.individualsChart(x)];
    return {
      mean: exact.values.centre,
      mr_bar: exact.movingRange.centre,
      'ucl_d2_1.128': handbook.values.upper,
      'lcl_d2_1.128': handbook.values.lower,
      ucl_exact_d2: exact.values.upper,
      lcl_exact_d2: exact.values.lower,
    };
  }),
  ewma: check(
    'statistics',
    'exponentially weighted moving average',
    { x: numbers, lambda: anyNumber, target: anyNumber, sigma: anyNumber, L: anyNumber },
    ({ x, lambda, target, sigma, L }) => {
      const settings = { weight: lambda, target, sigma, reach: L };
      const points = statistics.ewma(x, settings);
      const settled = statistics.settledLimits(settings);
      return {
        z: points.map(({ value }) => value),
        ucl_asymptotic: settled.upper,
        lcl_asymptotic: settled.lower,
        ucl_exact_first3: points.slice(0, 3).map(({ upper }) => upper),
        signals: fromOne(points.flatMap(({ signal }, i) => (signal ? [i] : []))),
      };
    },
  ),
  cusum_tabular: check(
    'statistics',
    'cumulative sums',
    { x: numbers, mu0: anyNumber, k_abs: anyNumber, h_abs: anyNumber },
    ({ x, mu0, k_abs, h_abs }) => {
      const points = statistics.cusum(x, { target: mu0, slack: k_abs, limit: h_abs });
      return {
        s_hi_13_to_20: points.slice(12, 20).map(({ high }) => high),
        s_lo_7_8: points.slice(6, 8).map(({ low }) => low),
        first_signal_index_1based: points.findIndex(({ signal }) => signal) + 1,
      };
    },
  ),
  cusum_arl_siegmund: check(
    'statistics',
    'points until a cumulative sum signals',
    { k: anyNumber, h: anyNumber },
    ({ k, h }) => ({
      arl0_one_sided: statistics.cusumRunLength({ slack: k, limit: h, shift: 0 }),
      arl0_two_sided: statistics.cusumRunLengthBothSides({ slack: k, limit: h, shift: 0 }),
      arl_shift_1sigma: statistics.cusumRunLength({ slack: k, limit: h, shift: 1 }),
    }),
  ),
  run_rules: check('statistics', 'points that complete a pattern', { zA: numbers, zB: numbers }, ({ zA, zB }) => ({
    zA: rules(zA),
    zB: rules(zB),
  })),
  capability: check(
    'statistics',
    'capability indices',
    { mean: anyNumber, sigma: anyNumber, lsl: anyNumber, usl: anyNumber },
    ({ mean, sigma, lsl, usl }) => {
      const found = statistics.capability(mean, sigma, { lower: lsl, upper: usl });
      return { ...found, cpu: found.cpUpper, cpl: found.cpLower, k: found.offCentre };
    },
  ),
  capability_ci: check(
    'statistics',
    'Cpk with its interval',
    { n: anyNumber, mean: anyNumber, s: anyNumber, lsl: anyNumber, usl: anyNumber },
    ({ n, mean, s, lsl, usl }) => {
      const { cpk } = statistics.capability(mean, s, { lower: lsl, upper: usl });
      return { cpk, ci95_bissell: ends(statistics.cpkLimits(cpk ?? NaN, n)) };
    },
  ),
  gauge_rr_crossed: check(
    'statistics',
    'gauge study: operator x trial x part',
    { operators: z.record(z.string(), z.array(numbers)), shape: z.literal('operator x trial x part') },
    ({ operators }) => {
      const readings = Object.values(operators);
      const named = (spread: statistics.GaugeSpread): object => ({
        EV: spread.repeatability,
        AV: spread.reproducibility,
        GRR: spread.gauge,
        PV: spread.parts,
        TV: spread.total,
        pctGRR: spread.gaugePercent,
        ndc: spread.distinct,
      });
      const found = statistics.crossedStudy(readings);
      return {
        ss: found.squares,
        anova_pooled: found.pooled ? named(found) : 'not pooled',
        'range_method_K_.5908_.5231_.3146': named(statistics.rangeStudy(readings)),
      };
    },
  ),
} as const;
