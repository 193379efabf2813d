import type { ChartSettings } from '@hull-record/contracts';
import { NELSON, WESTERN_ELECTRIC, type RunRule, type WatchSettings } from '@hull-record/statistics';

/** What a chart is watched by until somebody says otherwise; 0.2, half a deviation and 4 are common practice. */
export const USUAL: ChartSettings = {
  ...{ rules: 'Western Electric', run: 8, weight: 0.2, reach: 3, slack: 0.5, limit: 4 },
};

const SETS: Readonly<Record<ChartSettings['rules'], readonly RunRule[]>> = {
  'limits alone': WESTERN_ELECTRIC.slice(0, 1),
  'Western Electric': WESTERN_ELECTRIC,
  Nelson: NELSON,
};

/** The settings of the arithmetic: a run on one side is as long as the plant says. */
export const watchBy = ({ rules, run, weight, reach, slack, limit }: ChartSettings): WatchSettings => ({
  rules: SETS[rules].map((rule) =>
    rule.kind === 'beyond' && rule.distance === 0 ? { ...rule, count: run, of: run } : rule,
  ),
  ...{ weight, reach, slack, limit },
});
