import { randomUUID } from 'node:crypto';
import sharp from 'sharp';
import { releasedHull } from './certificates.js';
import type { Fields, Shop } from './shop.js';
import { PORT_SIDE } from './shop.js';
import { STATION, type MakeSample } from './write-sample.js';

/** A claim as it may be filed: a blister on the port side, with a survey. */
export const FILED: Fields = {
  ...{ kind: 'blister', reference: 'R-1', reportedOn: '2026-01-04', noticedOn: '2026-01-04', symptoms: 'blisters' },
  ...{ grade: '6M', looks: 'irregular', hoursAshore: 30.5 },
  spots: [{ place: PORT_SIDE, layer: 'L2', lengthMm: 8, counted: 12, countedAreaM2: 0.5 }],
  moisture: { meter: 'M', scale: 'relative', coating: 'on', readings: [{ value: 22.5, place: PORT_SIDE }] },
};

export const TERMS: Fields = {
  ...{ fromModelYear: 2026, toModelYear: 2027, starts: ['warranty registered', 'sold to first purchaser'] },
  covers: [{ kinds: ['blister'], years: 5, bearsPercent: [100, 62.5] }, { years: 1 }],
  ...{ transfer: { carries: true, untilYears: 3 }, exclusions: ['grounding'], reason: 'terms of the season' },
};

const claimed = async (shop: Shop, n: string): Promise<string> => {
  await shop.startHull(n);
  return shop.act(`/api/hulls/${n}/claims`, { ...FILED, ...today(shop) });
};

/** A dealer with a hull; the badge is the one who files. */
const dealerOf = async (shop: Shop, n: string): Promise<Fields> => {
  const badge = `D-${n}-${randomUUID().slice(0, 4)}`;
  await shop.act('/api/people', { badge, name: 'Desk', roles: ['dealer'], dealer: 'NLM' });
  await shop.act(`/api/hulls/${n}/life`, { what: 'at dealer', dealer: 'NLM' });
  return { enteredBy: badge };
};

const photo = (): Promise<Buffer> =>
  sharp({ create: { width: 8, height: 6, channels: 3, background: '#a0b0c0' } })
    .png()
    .toBuffer();

/** An outside repair as a dealer may report it: a gouge on the port side, with all that can be told. */
export const REPAIRED: Fields = {
  spots: [{ kind: 'gouge', place: PORT_SIDE, layer: 'L2', lengthMm: 180, widthMm: 40, depthMm: 3, note: 'a piling' }],
  ...{ procedure: 'Ground out, laid up, faired.', taperRatio: 12.5, plies: ['mat 450', 'mat 450'] },
  grindOutMm: { lengthMm: 320.5, widthMm: 180, depthMm: 3 },
  geometry: { originalMm: 6.2, damageDepthMm: 3, taperMm: 40, patchMm: 3.1, sides: 'one' },
  outside: {
    ...{ at: 'Yard of the dealer', toldBy: 'work sheet 118', doneOn: '2026-01-05' },
    ...{ material: 'vinyl ester of the yard', evidence: 'work sheet, photos' },
  },
  note: 'struck a piling',
};

/** Days of a claim of a hull that was begun just now. */
const today = (shop: Shop): Fields => {
  const day = shop.tick().slice(0, 10);
  return { reportedOn: day, noticedOn: day };
};

/** A valid request for each write about claims and warranty, and about outside repairs that dealers report. */
export const CLAIMS: Readonly<Record<string, MakeSample>> = {
  setWarrantyTerms: async (_shop, _n) => ({
    path: '/api/models/TS86/warranty-terms',
    fields: TERMS,
    other: { reason: 'another' },
  }),
  fileClaim: async (shop, n) => {
    await shop.startHull(n);
    return {
      path: `/api/hulls/${n}/claims`,
      fields: { ...FILED, ...today(shop), dealer: 'NLM' },
      other: { symptoms: 'others' },
    };
  },
  fileOwnClaim: async (shop, n) => {
    await shop.startHull(n);
    const by = await dealerOf(shop, n);
    return {
      path: `/api/own-hulls/${n}/claims`,
      fields: { ...FILED, ...today(shop), ...by },
      other: { symptoms: 'others' },
    };
  },
  acknowledge: async (shop, n) => {
    await releasedHull(shop, n);
    const by = await dealerOf(shop, n);
    const certificate = await shop.act(`/api/hulls/${n}/certificates`, {});
    const about = await shop.act(`/api/certificates/${certificate}/withdrawals`, { reason: 'printed wrong' });
    return { path: '/api/own-acknowledgements', fields: { about, ...by }, other: STATION };
  },
  addClaimPhoto: async (shop, n) => ({
    path: `/api/claims/${await claimed(shop, n)}/photos`,
    fields: { shows: 'HIN plate' },
    other: STATION,
    photo: await photo(),
  }),
  addOwnClaimPhoto: async (shop, n) => {
    await shop.startHull(n);
    const by = await dealerOf(shop, n);
    const claim = await shop.act(`/api/own-hulls/${n}/claims`, { ...FILED, ...today(shop), ...by });
    const path = `/api/own-hulls/${n}/claims/${claim}/photos`;
    return { path, fields: { shows: 'HIN plate', ...by }, other: STATION, photo: await photo() };
  },
  reportOwnRepair: async (shop, n) => {
    await shop.startHull(n);
    const by = await dealerOf(shop, n);
    return { path: `/api/own-hulls/${n}/outside-repairs`, fields: { ...REPAIRED, ...by }, other: { note: 'others' } };
  },
  addOwnRepairPhoto: async (shop, n) => {
    await shop.startHull(n);
    const by = await dealerOf(shop, n);
    const repair = await shop.act(`/api/own-hulls/${n}/outside-repairs`, { ...REPAIRED, ...by });
    const path = `/api/own-hulls/${n}/outside-repairs/${repair}/photos`;
    return { path, fields: { shows: 'finished', ...by }, other: STATION, photo: await photo() };
  },
  decideClaim: async (shop, n) => ({
    path: `/api/claims/${await claimed(shop, n)}/decisions`,
    fields: {
      ...{ decision: 'part paid', paidPercent: 62.5, hours: 12.25, reason: 'second year' },
      cost: { amount: '1840.50', currency: 'USD' },
    },
    other: { reason: 'another' },
  }),
  markClaim: async (shop, n) => ({
    path: `/api/claims/${await claimed(shop, n)}/marks`,
    fields: { foundBy: 'inspection of a hold', reason: 'seen when it was held' },
    other: { reason: 'another' },
  }),
};
