import type { Fields, Shop } from './shop.js';
import { STATION, type MakeSample } from './write-sample.js';

export const FREEZE: Fields = {
  kind: 'blister',
  cutOff: '2026-09-30',
  reportLagDays: 0,
  seed: 7,
  reason: 'for a test',
};

const opened = async (shop: Shop, n: string): Promise<string> => {
  await shop.act('/api/cases', { code: n, title: 'Blisters' });
  return n;
};

/** A valid request for each write about cases. */
export const CASES: Readonly<Record<string, MakeSample>> = {
  openCase: async (_shop, n) => ({
    path: '/api/cases',
    fields: { code: n, title: 'Blisters', underCounsel: true, readers: ['QUA-1', 'INS-1'] },
    other: { title: 'Others' },
  }),
  freezeCase: async (shop, n) => ({
    path: `/api/cases/${await opened(shop, n)}/settings`,
    fields: { ...FREEZE, models: ['TS86'], exposureShare: 0.125 },
    other: { reason: 'another' },
  }),
  lookAtCase: async (shop, n) => {
    await shop.act(`/api/cases/${await opened(shop, n)}/settings`, FREEZE);
    return { path: `/api/cases/${n}/looks`, fields: { version: 1 }, other: STATION };
  },
};
