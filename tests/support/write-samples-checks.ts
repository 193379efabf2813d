import type { Shop } from './shop.js';
import { NOTE, type MakeSample } from './write-sample.js';

const early = async (shop: Shop, n: string): Promise<string> => {
  await shop.startHull(n);
  const { result } = await (async () => {
    const at = shop.tick();
    return shop.receipt(`/api/parts/${n}-H/layers`, { layer: 'L2', startedAt: at, endedAt: at, doneBy: ['LAM-1'] });
  })();
  return (result as unknown as { nonconformities: [{ id: string }] }).nonconformities[0].id;
};

/** A valid request for each write about going on and rework. */
export const CHECKS: Readonly<Record<string, MakeSample>> = {
  goOn: async (shop, n) => {
    await shop.startHull(n);
    return {
      path: '/api/go-ons',
      fields: { part: `${n}-H`, layer: 'L2', rules: ['layer-out-of-order'], reason: 'night shift' },
      other: { reason: 'another' },
    };
  },
  recordRework: async (shop, n) => {
    const disposition = await shop.dispose('nonconformity', await early(shop, n), 'rework');
    const fields = { enteredBy: 'INS-1', doneBy: ['LAM-1'], note: 'laid up again' };
    return { path: `/api/dispositions/${disposition}/rework`, fields, other: NOTE };
  },
};
