import { InputInvalid } from '../errors.js';
import { at, mean } from '../numbers.js';
import { sizesOf, spreadOf, type CrossedReadings, type GaugeSpread } from './crossed-study.js';

/** 1/d2* by number of values from 2 on, for one range (AIAG Measurement Systems Analysis, K2 and K3; from memory). */
const FOR_ONE_RANGE = [0.7071, 0.5231, 0.4467, 0.403, 0.3742, 0.3534, 0.3375, 0.3249, 0.3146];
/** 1/d2 for the mean of many ranges of 2 or 3 trials (K1; from memory). */
const FOR_TRIALS = [0.8862, 0.5908];

const factor = (name: string, table: readonly number[], n: number): number => {
  const found = table[n - 2];
  if (found === undefined) throw new InputInvalid(name, n, `from 2 to ${table.length + 1}`);
  return found;
};

const range = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/**
 * The study by averages and ranges, for comparison with reports that use it: 2 or 3 trials, 2 to 10 operators and parts.
 *
 * EV = mean range K1; AV^2 = (range of operators K2)^2 - EV^2/(parts trials); PV = range of part means K3 (AIAG).
 */
export const rangeStudy = (readings: CrossedReadings): GaugeSpread => {
  const { operators, trials, parts } = sizesOf(readings);
  const indexes = Array.from({ length: parts }, (_, i) => i);
  const ranges = readings.flatMap((own) => indexes.map((i) => range(own.map((trial) => at(trial, i)))));
  const repeatability = mean(ranges) * factor('trials', FOR_TRIALS, trials);
  const apart = range(readings.map((own) => mean(own.flat()))) * factor('operators', FOR_ONE_RANGE, operators);
  const reproducibility = Math.sqrt(Math.max(0, apart ** 2 - repeatability ** 2 / (parts * trials)));
  const ofParts = indexes.map((i) => mean(readings.flatMap((own) => own.map((trial) => at(trial, i)))));
  return spreadOf(repeatability, reproducibility, range(ofParts) * factor('parts', FOR_ONE_RANGE, parts));
};
