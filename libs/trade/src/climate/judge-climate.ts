import { isBelow } from '../numbers.js';
import { hoursAtLeast, requireClimateLog, spreadC, type ClimatePoint } from './climate-log.js';
import type { ShopWindow } from './shop-window.js';

/** One thing about the climate that was out, and by what. */
export interface ClimateFault {
  readonly rule:
    'too cold' | 'too warm' | 'too humid' | 'too dry to spray' | 'warmed too late' | 'drift' | 'no reading';
  readonly detail: string;
}

interface Work {
  /** Instants, ms since the epoch. */
  readonly startedAt: number;
  readonly endedAt: number;
  readonly sprayed: boolean;
}

const HOUR_MS = 3_600_000;

/**
 * Judges the climate log of an area over the time of some work, by a window.
 *
 * Each point within the work is judged by itself. What the log cannot tell (no point within the work, or no log before
 * it) is said, not passed over. Points may come in any order. Throws ClimateInvalid on a log that is none.
 */
export const judgeClimate = (log: readonly ClimatePoint[], work: Work, window: ShopWindow): readonly ClimateFault[] => {
  const during = requireClimateLog(log).filter(({ at }) => at >= work.startedAt && at <= work.endedAt);
  if (during.length === 0)
    return [{ rule: 'no reading', detail: 'The climate log has no reading while the work was done.' }];
  return [
    ...during.flatMap((point) => pointFaults(point, work.sprayed, window)),
    ...beforeFaults(log, work, window),
    ...driftFaults(log, work, window),
  ];
};

const pointFaults = ({ airC, humidityPercent }: ClimatePoint, sprayed: boolean, window: ShopWindow): ClimateFault[] => {
  const faults: ClimateFault[] = [];
  const add = (rule: ClimateFault['rule'], detail: string): unknown => faults.push({ rule, detail });
  if (window.minC !== null && airC < window.minC) add('too cold', `${airC} C is under ${window.minC} C.`);
  if (window.maxC !== null && airC > window.maxC) add('too warm', `${airC} C is over ${window.maxC} C.`);
  if (window.maxHumidityPercent !== null && humidityPercent > window.maxHumidityPercent)
    add('too humid', `${humidityPercent} % is over ${window.maxHumidityPercent} %.`);
  const least = window.minHumiditySprayingPercent;
  if (sprayed && least !== null && humidityPercent < least)
    add('too dry to spray', `${humidityPercent} % is under ${least} % where material is sprayed.`);
  return faults;
};

const beforeFaults = (log: readonly ClimatePoint[], { startedAt }: Work, window: ShopWindow): ClimateFault[] => {
  if (window.hoursBefore === null || window.minC === null) return [];
  const hours = hoursAtLeast(log, window.minC, startedAt);
  if (!isBelow(hours, window.hoursBefore)) return [];
  const detail = `${window.minC} C had been kept for ${(Math.floor(hours * 10) / 10).toFixed(1)} h before the work; ${window.hoursBefore} h are asked.`;
  return [{ rule: 'warmed too late', detail }];
};

const driftFaults = (log: readonly ClimatePoint[], work: Work, window: ShopWindow): ClimateFault[] => {
  if (window.driftC === null) return [];
  const spread = spreadC(log.filter(({ at }) => at >= work.startedAt - 24 * HOUR_MS && at <= work.endedAt));
  if (!isBelow(2 * window.driftC, spread)) return [];
  return [
    {
      rule: 'drift',
      detail: `${(Math.ceil(spread * 10) / 10).toFixed(1)} C between the coldest and warmest of 24 h; ${2 * window.driftC} C are allowed.`,
    },
  ];
};
