import { isBelow } from '../numbers.js';
import { dewPointC, whyNoDewPoint } from './dew-point.js';

/**
 * The two published rules for how far a surface must be above the dew point; a plant chooses one.
 *
 * They differ: 5 F are 2.78 C, so a margin of 2.9 C passes one and fails the other.
 */
export const MARGIN_RULES = {
  '3 C': { marginC: 3, source: 'ISO 8502-4 (sentence from memory, confirm against the standard)' },
  '5 F': { marginC: 25 / 9, source: 'dew point charts in use in the US' },
} as const;

export type MarginRule = keyof typeof MARGIN_RULES;

/** How far the mold surface is above the dew point, and whether that is enough. */
export interface SurfaceMargin {
  readonly verdict: 'enough' | 'too small' | 'cannot be judged';
  readonly dewPointC: number | null;
  readonly marginC: number | null;
  readonly rule: MarginRule;
  readonly source: string;
  readonly note?: string;
}

/**
 * Judges the margin (C) of a surface over the dew point of the air; the temperature is the surface's own, not the air's.
 *
 * The margin itself is enough when it equals the rule. What is missing, not finite or impossible cannot be judged.
 */
export const judgeSurfaceMargin = (
  measured: { readonly airC: number; readonly humidityPercent: number; readonly surfaceC: number },
  rule: MarginRule,
): SurfaceMargin => {
  const { airC, humidityPercent, surfaceC } = measured;
  const { marginC: wanted, source } = MARGIN_RULES[rule];
  const why =
    whyNoDewPoint(airC, humidityPercent) ?? (Number.isFinite(surfaceC) ? undefined : 'No surface temperature.');
  if (why !== undefined)
    return { verdict: 'cannot be judged', dewPointC: null, marginC: null, rule, source, note: why };
  const point = dewPointC(airC, humidityPercent);
  const marginC = surfaceC - point;
  return { verdict: isBelow(marginC, wanted) ? 'too small' : 'enough', dewPointC: point, marginC, rule, source };
};
