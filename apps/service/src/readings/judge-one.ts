import type { Spot } from '@hull-record/contracts';
import { judgeSpot, toSi, type UnitCode } from '@hull-record/trade';
import type { JudgingRule } from './find-rule.js';

/** A spot as it goes into the record, with its verdict. */
export interface JudgedReading {
  readonly value: string;
  readonly below: string | null;
  readonly siValue: number;
  readonly siBelow: number | null;
  readonly verdict: {
    readonly verdict: 'inside' | 'outside' | 'cannot be judged' | 'no limit';
    readonly side?: 'low' | 'high';
    readonly crossesLimit: boolean;
    readonly note?: string;
  };
}

/** Judges one spot by a rule; without limits there is nothing to judge by, and that is what it says. */
export const judgeOne = (spot: Spot, unit: UnitCode, rule: JudgingRule): JudgedReading => {
  const value = (spot.value ?? spot.lastWet) as string;
  const below = spot.nextDry ?? null;
  const low = Number(value);
  const high = below === null ? undefined : Number(below);
  const verdict =
    rule.limits === null
      ? ({ verdict: 'no limit', crossesLimit: false } as const)
      : judgeSpot({ low, high, unit }, rule.limits);
  return {
    value,
    below,
    siValue: toSi(low, unit),
    siBelow: high === undefined ? null : toSi(high, unit),
    verdict: withNote(verdict, low, high, unit),
  };
};

/** Of an interval that reaches over a limit the gauge cannot tell; the reader is told so. */
const withNote = (
  verdict: JudgedReading['verdict'],
  low: number,
  high: number | undefined,
  unit: string,
): JudgedReading['verdict'] =>
  verdict.crossesLimit && high !== undefined
    ? {
        ...verdict,
        note: `The film lies from ${low} to under ${high} ${unit}: part of that is on the other side of a limit.`,
      }
    : verdict;
