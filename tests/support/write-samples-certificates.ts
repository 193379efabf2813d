import type { Shop } from './shop.js';
import { STATION, type MakeSample } from './write-sample.js';

/** Makes and releases a hull of lots of its own. */
const released = async (shop: Shop, n: string): Promise<string> => {
  await shop.receive(`${n}-G`, 'GEL-W');
  await shop.receive(`${n}-R`, 'RES-VE');
  await shop.receive(`${n}-M`, 'MAT-450');
  await shop.wholeHull(n, { gel: `${n}-G`, resin: { lot: `${n}-R` }, glass: `${n}-M` });
  await shop.act(`/api/hulls/${n}/releases`, {});
  return n;
};

/** A valid request for each write about certificates. */
export const CERTIFICATES: Readonly<Record<string, MakeSample>> = {
  issueCertificate: async (shop, n) => ({
    path: `/api/hulls/${await released(shop, n)}/certificates`,
    fields: {},
    other: STATION,
  }),
  withdrawCertificate: async (shop, n) => {
    const id = await shop.act(`/api/hulls/${await released(shop, n)}/certificates`, {});
    return {
      path: `/api/certificates/${id}/withdrawals`,
      fields: { reason: 'printed wrong' },
      other: { reason: 'another' },
    };
  },
};
