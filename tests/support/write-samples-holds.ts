import { kg, type Shop } from './shop.js';
import { NOTE, received, type MakeSample } from './write-sample.js';

/** A hold on a lot that went into one hull of the name. */
const held = async (shop: Shop, n: string): Promise<string> => {
  await shop.startHull(n);
  const lot = await received(shop, n);
  await shop.layer(n, 'L2', [{ lot, amount: kg(4) }]);
  return shop.act(`/api/lots/${lot}/holds`, { kind: 'quality', reason: 'gel time' });
};

/** A valid request for each write of holds. */
export const HOLDS: Readonly<Record<string, MakeSample>> = {
  holdOther: (_shop, n) =>
    Promise.resolve({
      path: '/api/holds',
      fields: {
        ...{ on: { what: 'period' }, from: '2026-01-01T06:00:00-05:00', until: '2026-01-01T07:00:00-05:00' },
        ...{ kind: 'quality', reason: `the oven of ${n} was cold` },
      },
      other: { kind: 'safety' },
    }),
  narrowHold: async (shop, n) => ({
    path: `/api/holds/${await held(shop, n)}/scopes`,
    fields: { minShare: 0.05, reason: 'tested in good resin' },
    other: { minShare: 0.1 },
  }),
  disposeHeld: async (shop, n) => ({
    path: `/api/holds/${await held(shop, n)}/dispositions`,
    fields: { hulls: [n], what: 'found', note: 'soft at the keel' },
    other: NOTE,
  }),
  closeHold: async (shop, n) => {
    const hold = await held(shop, n);
    await shop.act(`/api/holds/${hold}/dispositions`, { hulls: [n], what: 'checked' });
    return { path: `/api/holds/${hold}/closings`, fields: { reason: 'all looked at' }, other: { reason: 'another' } };
  },
};
