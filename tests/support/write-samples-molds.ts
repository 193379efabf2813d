import { SCHEDULES } from './shop-stock.js';
import { NOTE, received, used, type MakeSample } from './write-sample.js';

/** A valid request for each write about molds and layers of several parts. */
export const MOLDS: Readonly<Record<string, MakeSample>> = {
  careForMold: async (shop, n) => {
    await shop.act('/api/molds', { code: n, model: 'TS86', partKind: 'deck' });
    const fields = { what: 'waxed', doneBy: ['LAM-1'], duePulls: 4, dueOn: '2026-08-01', ...(await used(shop, n)) };
    return { path: `/api/molds/${n}/care`, fields, other: NOTE };
  },
  moveToSchedule: async (shop, n) => {
    await shop.startDeck(`${n}-D`);
    const versions = await shop.read<{ schedules: { version: number }[] }[]>('/api/models');
    const version = Math.max(...versions.flatMap(({ schedules }) => schedules.map((each) => each.version))) + 1;
    await shop.act('/api/models/TS86/schedules', { ...SCHEDULES[1], version });
    const fields = { version, fromLayer: 'D1', reason: 'changed' };
    return { path: `/api/parts/${n}-D/schedule`, fields, other: { reason: 'another' } };
  },
  recordLayers: async (shop, n) => {
    for (const part of [`${n}-1`, `${n}-2`]) await shop.startDeck(part);
    const lot = await received(shop, n);
    const at = { startedAt: shop.tick(), endedAt: shop.tick() };
    const parts = [`${n}-1`, `${n}-2`].map((part, i) => ({ part, weight: i + 1 }));
    const fields = {
      layer: 'D1',
      parts,
      ...at,
      doneBy: ['LAM-1'],
      used: [{ lot, amount: { quantity: '9.0', unit: 'lb', basis: 'metered' } }],
    };
    return { path: '/api/layers', fields, other: NOTE };
  },
};
