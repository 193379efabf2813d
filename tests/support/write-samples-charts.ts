import { kg } from './shop.js';
import { type MakeSample } from './write-sample.js';

/** A valid request for each write about charts. */
export const CHARTS: Readonly<Record<string, MakeSample>> = {
  freezeChart: async (shop, n) => {
    await shop.receive(n, 'GEL-W');
    for (const [hull, wet] of [
      [`${n}1`, 16],
      [`${n}2`, 18],
    ] as const) {
      await shop.startHull(hull);
      await shop.film(await shop.layer(hull, 'L1', [{ lot: n, amount: kg(18) }]), [[wet, wet + 2]]);
    }
    const settings = { rules: 'Nelson', run: 9, weight: 0.15, reach: 2.7, slack: 0.5, limit: 4.5 };
    const of = { model: 'TS86', part: 'hull molding', layer: 'L1', from: '2026-01-01', to: '2026-12-31' };
    return {
      path: '/api/charts/wet%20film/limits',
      fields: { ...of, settings, reason: 'a calm stretch' },
      other: { reason: 'another' },
    };
  },
};
