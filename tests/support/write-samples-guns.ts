import { kg, type Shop } from './shop.js';
import { received, STATION, type MakeSample } from './write-sample.js';

const gun = async (shop: Shop, n: string): Promise<string> => {
  await shop.act('/api/equipment', { code: n, kind: 'gun', description: 'Chopper gun' });
  return n;
};

/** A valid request for each write about guns and checks of equipment. */
export const GUNS: Readonly<Record<string, MakeSample>> = {
  hookUpGun: async (shop, n) => ({
    path: `/api/guns/${await gun(shop, n)}/hook-ups`,
    fields: { feed: 'resin', lot: await received(shop, n) },
    other: { feed: 'catalyst' },
  }),
  setGun: async (shop, n) => ({
    path: `/api/guns/${await gun(shop, n)}/settings`,
    fields: { catalystPercent: 1.8 },
    other: { catalystPercent: 2 },
  }),
  apportionDrop: async (shop, n) => {
    await shop.startHull(n);
    const layers = [await shop.layer(n, 'L2', []), await shop.layer(n, 'L3', [])];
    const over = layers.map((layer, i) => ({ layer, weight: i + 1.5 }));
    return {
      path: '/api/drops',
      fields: { from: { lot: await received(shop, n) }, amount: { quantity: '20.0', unit: 'kg' }, over },
      other: STATION,
    };
  },
  checkEquipment: async (shop, n) => ({
    path: `/api/equipment/${await gun(shop, n)}/checks`,
    fields: {
      what: 'timed catch',
      caught: { seconds: 30, resinG: 1_000, catalystG: 18 },
      limits: { min: 1.2, unit: '%' },
    },
    other: { note: 'another' },
  }),
  emptyTank: async (shop, n) => {
    await shop.act('/api/tanks', { code: n, material: 'RES-VE', capacityKg: 900 });
    await shop.act(`/api/tanks/${n}/fills`, {
      code: `${n}-1`,
      heel: null,
      inputs: [{ lot: await received(shop, n), amount: kg(1) }],
    });
    return { path: `/api/tanks/${n}/emptyings`, fields: { cleaned: true }, other: { cleaned: false } };
  },
};
