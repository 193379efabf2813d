import { kg, type Shop } from './shop.js';
import { received, type MakeSample } from './write-sample.js';

const CONTENTS = {
  ...{ defect: 'a bond', hazard: 'it may let go', measures: 'renew it', undertaking: 'free of charge' },
  ...{ manufacturer: 'Invented Boats', address: '1 Slip Road', make: 'TS' },
};
const DECISION = {
  ...{ decision: 'substantial risk of injury', discoveredOn: '2026-01-02', decidedBy: 'ADMIN', why: 'a bond' },
};

/** A hold that reaches one hull, which is with its first purchaser. */
const held = async (shop: Shop, n: string): Promise<{ hold: string; owner: string }> => {
  await shop.startHull(n);
  const lot = await received(shop, n);
  await shop.layer(n, 'L2', [{ lot, amount: kg(4) }]);
  await shop.act(`/api/hulls/${n}/life`, { what: 'sold to first purchaser' });
  const owner = { name: 'Invented Owner', address: '1 Quay Street' };
  const id = await shop.act(`/api/hulls/${n}/owners`, { what: 'first purchaser', owner });
  return { hold: await shop.act(`/api/lots/${lot}/holds`, { kind: 'quality', reason: 'gel time' }), owner: id };
};

const noticed = async (shop: Shop, n: string): Promise<{ path: string; owner: string }> => {
  const { hold, owner } = await held(shop, n);
  await shop.act(`/api/holds/${hold}/duty-decisions`, DECISION);
  await shop.act(`/api/holds/${hold}/notices`, { code: `${n}-N`, contents: CONTENTS });
  return { path: `/api/notices/${n}-N`, owner };
};

/** A valid request for each write of notices. */
export const NOTICES: Readonly<Record<string, MakeSample>> = {
  decideDuty: async (shop, n) => ({
    path: `/api/holds/${(await held(shop, n)).hold}/duty-decisions`,
    fields: DECISION,
    other: { decision: 'none' },
  }),
  giveNotice: async (shop, n) => {
    const { hold } = await held(shop, n);
    await shop.act(`/api/holds/${hold}/duty-decisions`, DECISION);
    const fields = { code: `${n}-N`, contents: CONTENTS };
    return { path: `/api/holds/${hold}/notices`, fields, other: { code: `${n}-O` } };
  },
  mailNotice: async (shop, n) => {
    const { path, owner } = await noticed(shop, n);
    const fields = { class: 'certified mail', recipients: [{ hull: n, owner, proof: 'no. 1' }] };
    return { path: `${path}/mailings`, fields, other: { class: 'first-class mail' } };
  },
  returnMailing: async (shop, n) => {
    const { path, owner } = await noticed(shop, n);
    const letter = await shop.act(`${path}/mailings`, { class: 'certified mail', recipients: [{ hull: n, owner }] });
    return { path: `/api/mailings/${letter}/returns`, fields: { why: 'moved' }, other: { why: 'unknown' } };
  },
  reportNotice: async (shop, n) => ({
    path: `${(await noticed(shop, n)).path}/reports`,
    fields: { what: 'initial', sentOn: '2026-01-05', proof: 'no. 9' },
    other: { sentOn: '2026-01-04' },
  }),
};
