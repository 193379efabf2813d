import { told } from './example-parts.js';

/** One request for each route about charts. */
export const EXAMPLES_OF_CHARTS = {
  freezeChart: told({
    ...{ enteredBy: 'QUA-01', model: 'TS86', part: 'hull molding', layer: 'L1', from: '2026-03-02', to: '2026-05-08' },
    settings: { rules: 'Western Electric', run: 8, weight: 0.2, reach: 3, slack: 0.5, limit: 4 },
    reason: 'Ten weeks after the gun was set, without a change of material.',
  }),
};
