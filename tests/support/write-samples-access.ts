import type { Fields, Shop } from './shop.js';
import type { MakeSample } from './write-sample.js';
import { device, sendUnder, type Sent } from './devices.js';

/** A person of the shop with one job. */
const person = async (shop: Shop, badge: string, role: string): Promise<string> => {
  await shop.act('/api/people', { badge, name: `Person ${badge}`, roles: [role] });
  return badge;
};

/** A device that a test enrolled, and what it sent. */
const unproved = async (shop: Shop, n: string): Promise<{ entry: string; inspector: string }> => {
  const inspector = await person(shop, `${n}-I`, 'inspector');
  await shop.startHull(n);
  const tablet = await device(shop, `${n}-T`);
  const sent = await sendUnder(shop, tablet, `/api/parts/${n}-H/defects`, {
    ...{ enteredBy: inspector, device: `${n}-T`, kind: 'dry-spot' },
    place: { surface: 'shell', side: 'port', fromTransomMm: 2_000, girthMm: 600 },
  });
  return { entry: String(sent.body.id), inspector };
};

const kept = async (shop: Shop, n: string): Promise<string> => {
  await person(shop, `${n}-R`, 'receiving');
  const tablet = await device(shop, `${n}-T`);
  await shop.act(`/api/devices/${n}-T/revocations`, { reason: 'lost' });
  const sent: Sent = await sendUnder(shop, tablet, '/api/lots', {
    ...{ enteredBy: `${n}-R`, device: `${n}-T`, code: `${n}-lot`, material: 'RES-VE', supplier: 'Aldermoor Resins' },
    ...{ supplierLot: `S-${n}`, amount: { quantity: 200, unit: 'kg', basis: 'weighed' }, state: 'quarantined' },
  });
  return String(sent.body['kept']);
};

/** A valid request for each write about people and devices. */
export const ACCESS: Readonly<Record<string, MakeSample>> = {
  grantRole: async (shop, n) => {
    await person(shop, n, 'laminator');
    return { path: `/api/people/${n}/roles`, fields: { role: 'patcher' }, other: { role: 'inspector' } };
  },
  endRole: async (shop, n) => {
    await person(shop, n, 'laminator');
    const fields: Fields = { role: 'laminator', reason: 'works elsewhere' };
    return { path: `/api/people/${n}/role-ends`, fields, other: { reason: 'another' } };
  },
  revokeDevice: async (shop, n) => {
    await shop.act('/api/devices', { code: n, description: 'Tablet', ratedForClassifiedArea: false });
    return { path: `/api/devices/${n}/revocations`, fields: { reason: 'lost' }, other: { reason: 'another' } };
  },
  confirmEntry: async (shop, n) => {
    const { entry, inspector } = await unproved(shop, n);
    return {
      path: `/api/unproved-entries/${entry}/confirmations`,
      fields: { enteredBy: inspector, confirmed: true },
      other: { confirmed: false, reason: 'not mine' },
    };
  },
  decideOnEntry: async (shop, n) => ({
    path: `/api/kept-entries/${await kept(shop, n)}/decisions`,
    fields: { admitted: true, reason: 'made before it was lost' },
    other: { reason: 'another' },
  }),
};
