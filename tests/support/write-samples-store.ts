import sharp from 'sharp';
import { kg, type Shop } from './shop.js';
import { NOTE, received, STATION, type MakeSample } from './write-sample.js';

const labelled = async (shop: Shop, n: string): Promise<string> => {
  const containers = [{ label: `${n}-D`, kind: 'drum', amount: kg(200) }];
  await shop.act(`/api/lots/${await received(shop, n)}/containers`, { containers });
  return `${n}-D`;
};

const grey = (): Promise<Buffer> =>
  sharp({ create: { width: 8, height: 6, channels: 3, background: '#a0b0c0' } })
    .png()
    .toBuffer();

/** A valid request for each write of the store. */
export const STORE: Readonly<Record<string, MakeSample>> = {
  labelContainers: async (shop, n) => ({
    path: `/api/lots/${await received(shop, n)}/containers`,
    fields: {
      containers: [
        { label: `${n}-1`, kind: 'drum', amount: { quantity: '200.0', unit: 'lb', basis: 'weighed' }, place: 'Bay 2' },
        { label: `${n}-2`, kind: 'pail', amount: kg(20) },
      ],
    },
    other: STATION,
  }),
  addLotPhoto: async (shop, n) => ({
    path: `/api/lots/${await received(shop, n)}/photos`,
    fields: {},
    other: STATION,
    photo: await grey(),
  }),
  addUnidentifiedPhoto: async (shop, n) => {
    await shop.startHull(n);
    const unidentified = { role: 'resin', looks: 'amber, no label' };
    const entry = await shop.layer(n, 'L1', [
      { lot: await received(shop, n), amount: kg(1) },
      { unidentified, amount: kg(3) },
    ]);
    return { path: `/api/unidentified/${entry}/photos`, fields: { line: 1 }, other: STATION, photo: await grey() };
  },
  tellContainer: async (shop, n) => ({
    path: `/api/containers/${await labelled(shop, n)}/history`,
    fields: { what: 'moved', place: 'Bay 3' },
    other: NOTE,
  }),
  placeHold: async (shop, n) => ({
    path: `/api/lots/${await received(shop, n)}/holds`,
    fields: { kind: 'quality', reason: 'gel time' },
    other: { kind: 'safety' },
  }),
  liftHold: async (shop, n) => {
    const hold = await shop.act(`/api/lots/${await received(shop, n)}/holds`, { kind: 'quality', reason: 'gel time' });
    return { path: `/api/holds/${hold}/lifts`, fields: { reason: 'retested' }, other: { reason: 'another' } };
  },
  bookLoss: async (shop, n) => ({
    path: `/api/lots/${await received(shop, n)}/losses`,
    fields: { what: 'purged', reason: 'gelled', amount: { quantity: '2.50', unit: 'lb', basis: 'weighed' } },
    other: { what: 'spilled' },
  }),
  countLot: async (shop, n) => ({
    path: `/api/lots/${await received(shop, n)}/counts`,
    fields: { quantity: '990.50', unit: 'kg' },
    other: { quantity: '0' },
  }),
  retestLot: async (shop, n) => ({
    path: `/api/lots/${await received(shop, n)}/retests`,
    fields: { expiresOn: '2026-09-30', result: 'within the data sheet', certificate: { viscosity: 1.5 } },
    other: { expiresOn: '2026-10-31' },
  }),
};
