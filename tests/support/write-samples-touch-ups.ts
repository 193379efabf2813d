import type { Shop } from './shop.js';
import { NOTE, used, type MakeSample } from './write-sample.js';

const spots = [{ zone: 'port topside', kind: 'pit', count: 3, largestMm: 2.5 }];
const PAT = { doneBy: ['PAT-1'] };

const touchUpOf = async (shop: Shop, n: string): Promise<string> => {
  await shop.startHull(n);
  return shop.act(`/api/parts/${n}-H/touch-ups`, { spots, ...PAT });
};

/** A valid request for each write about touch-ups, re-inspections and scrapped parts. */
export const TOUCH_UPS: Readonly<Record<string, MakeSample>> = {
  recordTouchUp: async (shop, n) => {
    await shop.startHull(n);
    return { path: `/api/parts/${n}-H/touch-ups`, fields: { spots, ...PAT, ...(await used(shop, n)) }, other: NOTE };
  },
  judgeTouchUp: async (shop, n) => ({
    path: `/api/touch-ups/${await touchUpOf(shop, n)}/acceptances`,
    fields: { enteredBy: 'INS-1', accepted: true },
    other: NOTE,
  }),
  setTouchUpLimit: (_shop, n) =>
    Promise.resolve({
      path: '/api/touch-up-limits',
      fields: { spotsInAZone: 8, spotsOnAPart: 30, largestMm: 12.5, source: n },
      other: { spotsInAZone: 9 },
    }),
  inspectRepairAgain: async (shop, n) => {
    await shop.startHull(n);
    const repair = await shop.repair(`${n}-H`, [await shop.defect(`${n}-H`)]);
    return { path: `/api/repairs/${repair}/re-inspections`, fields: { enteredBy: 'INS-1', passed: true }, other: NOTE };
  },
  answerAsk: async (shop, n) => {
    await shop.startHull(n);
    return {
      path: `/api/defects/${await shop.defect(`${n}-H`, { kind: 'catalyst-slug' })}/answers`,
      fields: { note: 'nobody knows' },
      other: NOTE,
    };
  },
  scrapPart: async (shop, n) => {
    await shop.startDeck(`${n}-D`);
    return { path: `/api/parts/${n}-D/scrapping`, fields: { reason: 'prerelease' }, other: { reason: 'another' } };
  },
};
