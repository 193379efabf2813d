import { blank } from './photos.js';
import type { Shop } from './shop.js';
import { NOTE, STATION, type MakeSample } from './write-sample.js';

const started = async (shop: Shop, n: string): Promise<string> => {
  await shop.startHull(n);
  return n;
};
const owner = { name: 'Invented Owner', address: '1 Quay Street' };
const registered = async (shop: Shop, n: string): Promise<string> =>
  shop.act(`/api/hulls/${await started(shop, n)}/owners`, { what: 'later owner', owner });
const hin = (n: string, year: string): string => `TRZ${n.replace(/\D/g, '').slice(-5).padStart(5, '0')}A${year}`;

/** A valid request for each write about owners, fitted items and joints. */
export const OWNERS: Readonly<Record<string, MakeSample>> = {
  registerOwner: async (shop, n) => ({
    path: `/api/hulls/${await started(shop, n)}/owners`,
    fields: { what: 'first purchaser', owner },
    other: { owner: { name: 'Another Owner' } },
  }),
  eraseOwner: async (shop, n) => {
    const id = await shop.act(`/api/hulls/${await started(shop, n)}/owners`, { what: 'later owner', owner });
    return { path: `/api/owners/${id}/erasures`, fields: { reason: 'asked for' }, other: { reason: 'another' } };
  },
  recordOwnerRequest: async (shop, n) => ({
    path: `/api/owners/${await registered(shop, n)}/requests`,
    fields: { asked: 'access', askedOn: '2026-01-04' },
    other: { asked: 'erasure' },
  }),
  correctOwner: async (shop, n) => ({
    path: `/api/owners/${await registered(shop, n)}/corrections`,
    fields: { owner: { name: 'Renamed Owner' }, reason: 'by letter' },
    other: { owner: { name: 'Another Owner' } },
  }),
  placeLegalHold: async (shop, n) => ({
    path: `/api/hulls/${await started(shop, n)}/legal-holds`,
    fields: { reason: 'proceedings' },
    other: { reason: 'another' },
  }),
  endLegalHold: async (shop, n) => {
    const hold = await shop.act(`/api/hulls/${await started(shop, n)}/legal-holds`, { reason: 'proceedings' });
    return { path: `/api/legal-holds/${hold}/endings`, fields: { reason: 'closed' }, other: { reason: 'another' } };
  },
  redactText: async (shop, n) => {
    const of = await shop.act(`/api/hulls/${await started(shop, n)}/life`, { what: 'returned', note: 'by its owner' });
    const fields = { kind: 'life fact', of, wording: 'by road', reason: 'asked for' };
    return { path: '/api/text-redactions', fields, other: { wording: 'another' } };
  },
  redactPhoto: async (shop, n) => {
    await shop.startHull(n);
    const defect = await shop.defect(`${n}-H`);
    const photo = await shop.postPhoto(
      `/api/defects/${defect}/photos`,
      shop.envelope(),
      await blank(30, 20).jpeg().toBuffer(),
    );
    const fields = { areas: [{ x: 0, y: 0, width: 0.5, height: 0.5 }], reason: 'asked for' };
    return { path: `/api/photos/${photo.body.id}/redactions`, fields, other: { reason: 'another' } };
  },
  fitItem: async (shop, n) => ({
    path: `/api/hulls/${await started(shop, n)}/fitted-items`,
    fields: { what: 'engine', serial: n, customerSupplied: true },
    other: NOTE,
  }),
  removeItem: async (shop, n) => {
    const item = await shop.act(`/api/hulls/${await started(shop, n)}/fitted-items`, { what: 'engine', serial: n });
    return { path: `/api/fitted-items/${item}/removals`, fields: { reason: 'replaced' }, other: { reason: 'another' } };
  },
  correctHin: async (shop, n) => {
    await shop.startHull(n);
    await shop.act(`/api/hulls/${n}/hins`, { hin: hin(n, '526') });
    await shop.act(`/api/hulls/${n}/life`, { what: 'HIN affixed' });
    const fields = { hin: hin(n, '626'), reason: 'struck twice', authority: 'letter 17' };
    return { path: `/api/hulls/${n}/hin-corrections`, fields, other: { reason: 'another' } };
  },
  readJoint: async (shop, n) => {
    await shop.startHull(n);
    await shop.startDeck(`${n}-D`);
    const path = `/api/joints/${await shop.join(n, `${n}-D`)}/readings`;
    const fields = {
      what: 'bond gap',
      unit: 'mm',
      limits: { max: 4, unit: 'mm' },
      source: 'AP-2',
      spots: [{ value: '3.20' }],
    };
    return { path, fields, other: STATION };
  },
};
