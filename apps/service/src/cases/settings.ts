import type { CASE_ORIGINS, CASE_STRATA, FreezeCase } from '@hull-record/contracts';
import { SETTINGS, type AttributionSettings } from '@hull-record/statistics';

/** Raised whenever the same inputs would give another answer. */
export const METHOD = 'hulls by lots, 5';

/** Shares at which the exposed hulls are shown, whatever the threshold of the test. */
export const SHOWN_SHARES = [0.01, 0.05, 0.2] as const;

/** All that the verdict of a case hangs on, but its inputs. */
export interface CaseSettings {
  readonly method: string;
  readonly kind: string;
  readonly models: readonly string[];
  readonly builtFrom: string | null;
  readonly builtTo: string | null;
  readonly origin: (typeof CASE_ORIGINS)[number];
  readonly cutOff: string;
  readonly cutOffBecause: string;
  readonly reportLagDays: number;
  readonly strata: readonly (typeof CASE_STRATA)[number][];
  readonly exposureShare: number;
  readonly claims: FreezeCase['claims'];
  readonly attribution: AttributionSettings;
}

/** The least share of a lot that anything is said of. */
export const leastShareOf = ({ exposureShare }: CaseSettings): number => Math.min(exposureShare, ...SHOWN_SHARES);

/** The settings to freeze, of a request and its cut-off: nothing is left to defaults that may change. */
export const settingsOf = (
  request: FreezeCase,
  { cutOff, cutOffBecause }: { cutOff: string; cutOffBecause: string },
): CaseSettings => ({
  ...{ method: METHOD, kind: request.kind, models: [...request.models].sort() },
  ...{ builtFrom: request.builtFrom ?? null, builtTo: request.builtTo ?? null, origin: request.origin },
  ...{ cutOff, cutOffBecause, reportLagDays: request.reportLagDays, strata: [...request.strata].sort() },
  ...{ exposureShare: request.exposureShare, claims: request.claims },
  attribution: {
    ...SETTINGS,
    thresholds: [request.exposureShare],
    ...{ seed: request.seed, worlds: request.worlds },
  },
});
