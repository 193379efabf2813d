import { afterAll, beforeAll, describe, expect, it, jest } from '@jest/globals';
import type { OwnerDetail, OwnerFile, OwnersPage } from '@hull-record/contracts';
import fc from 'fast-check';
import { verifyDatabase } from '../../apps/service/src/verify/verify-database.js';
import { readAsOne } from '../../apps/service/src/platform/database/read-as-one.js';
import { KeyRing } from '../../apps/service/src/platform/journal/key-ring.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop, type Fields } from '../support/shop.js';
import { whereItIs } from '../support/where-it-is.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  for (const [lot, material] of [
    ['GEL', 'GEL-W'],
    ['VE', 'RES-VE'],
    ['MAT', 'MAT-450'],
  ] as const)
    await shop.receive(lot, material);
  // Kept for years: built now, and placed on a market.
  await shop.wholeHull('K1', { gel: 'GEL', resin: { lot: 'VE' }, glass: 'MAT' });
  await shop.act('/api/hulls/K1/releases', { happenedAt: new Date(Date.now() - 3_600_000).toISOString() });
  for (const hull of ['U1', 'U2', 'U3']) await shop.startHull(hull);
}, 120_000);
afterAll(() => service.close());

const OWNER: OwnerDetail = {
  ...{ name: 'Ysolde Fernbrake', address: '7 Invented Slip', email: 'ysolde@example.org' },
  phone: '+1 555 0137 44',
};
const register = (hull: string, owner: OwnerDetail = OWNER): Promise<string> =>
  shop.act(`/api/hulls/${hull}/owners`, { what: 'first purchaser', owner });
const erase = async (owner: string): Promise<Fields> =>
  (await shop.receipt(`/api/owners/${owner}/erasures`, { reason: 'asked for by letter' })).result;
const file = (owner: string): Promise<OwnerFile> => shop.read<OwnerFile>(`/api/owners/${owner}`);
const faults = async () => {
  const keys = new Set(
    service
      .get(KeyRing)
      .all()
      .map(({ keyId }) => keyId),
  );
  return (await readAsOne(service.db, (tx) => verifyDatabase(tx, { keys, held: [] }))).faults;
};
const words = fc
  .array(fc.constantFrom(...'bcdfghjklmnpqrstvwxz'), { minLength: 14, maxLength: 20 })
  .map((letters) => letters.join(''));

describe('personal data of an owner', () => {
  it('after erasure is in no table and in no log, whatever it was, and the journal still holds together', async () => {
    const said: string[] = [];
    const hear = (chunk: unknown): boolean => (said.push(String(chunk)), true);
    const spies = [process.stdout, process.stderr].map((stream) =>
      jest.spyOn(stream, 'write').mockImplementation(hear as never),
    );
    try {
      await fc.assert(
        fc.asyncProperty(words, words, words, async (name, address, phone) => {
          const owner = await register('U1', { name, address });
          expect(await whereItIs(service, [name])).toEqual(['work.owner_detail']);
          await shop.act(`/api/owners/${owner}/corrections`, { owner: { name, phone }, reason: 'by letter' });
          expect(await whereItIs(service, [address])).toEqual([]);
          expect(await erase(owner)).toMatchObject({ erased: true, keptBecause: null });
          const again = await shop.post(`/api/owners/${owner}/corrections`, {
            ...shop.envelope({ owner: { name, phone }, reason: 'too late' }),
          });
          expect(again.status).toBe(409);
          expect(await whereItIs(service, [name, address, phone])).toEqual([]);
          expect(said.filter((text) => [name, address, phone].some((each) => text.includes(each)))).toEqual([]);
        }),
        { numRuns: 4, seed: 20_260_105 },
      );
    } finally {
      for (const spy of spies) spy.mockRestore();
    }
    expect(await faults()).toEqual([]);
  });

  it('has 192 bits of salt a value, which change with the value and go with it', async () => {
    const owner = await register('U2');
    const salt = async (): Promise<string[]> =>
      (await service.asOwner<{ salt: string }>(`select salt from work.owner_detail where owner_id = '${owner}'`)).map(
        (row) => row.salt,
      );
    const [first = ''] = await salt();
    expect(Buffer.from(first, 'base64url')).toHaveLength(24);
    await shop.act(`/api/owners/${owner}/corrections`, { owner: { name: OWNER.name }, reason: 'no address any more' });
    const [second = ''] = await salt();
    expect(second).not.toBe(first);
    expect(await whereItIs(service, [first])).toEqual([]);
    expect((await file(owner)).changes).toMatchObject([{ what: 'corrected', erased: ['address', 'email', 'phone'] }]);
    await erase(owner);
    expect(await whereItIs(service, [second])).toEqual([]);
  });

  it('is narrowed while the record has to be kept: the letter of a notice still finds its way', async () => {
    const owner = await register('K1');
    expect(await erase(owner)).toMatchObject({
      ...{ erased: false, narrowed: ['email', 'phone'], keptUntil: expect.stringMatching(/^20\d\d-/) },
      keptBecause: expect.stringContaining('10 years'),
    });
    expect(await file(owner)).toMatchObject({
      ...{ state: 'narrowed', name: null, detail: { name: OWNER.name, address: OWNER.address } },
      changes: [{ what: 'narrowed', erased: ['email', 'phone'] }],
    });
    expect(await whereItIs(service, ['ysolde@example.org', '0137 44'])).toEqual([]);
    expect(await shop.read('/api/hulls/K1/owners')).toMatchObject([{ owner: null, narrowedAt: expect.any(String) }]);
    expect(await faults()).toEqual([]);
  });

  it('is kept while a legal hold lasts, and erased when it has ended', async () => {
    const owner = await register('U3');
    const hold = await shop.act('/api/hulls/U3/legal-holds', { reason: 'proceedings, file 12' });
    expect(await erase(owner)).toMatchObject({ erased: false, keptBecause: 'Legal hold: proceedings, file 12' });
    expect(await file(owner)).toMatchObject({ legalHolds: 1, holds: [{ id: hold, reason: 'proceedings, file 12' }] });
    await shop.act(`/api/legal-holds/${hold}/endings`, { reason: 'closed' });
    const twice = await shop.post(`/api/legal-holds/${hold}/endings`, shop.envelope({ reason: 'closed' }));
    expect(twice).toMatchObject({ status: 409, body: { type: '/problems/ended-already' } });
    expect(await erase(owner)).toMatchObject({ erased: true });
    expect(await file(owner)).toMatchObject({ state: 'erased', detail: null, name: null });
  });
});

describe('what an owner asks for', () => {
  it('is recorded, and answered with all that is on record, as a file and as a table', async () => {
    const owner = await register('U2', { name: 'Perrin Oakhollow', address: '=1+1 Slip' });
    const asked = await shop.receipt(`/api/owners/${owner}/requests`, { asked: 'access', askedOn: '2026-01-05' });
    expect(asked.result).toEqual({ answerBy: '2026-02-04' });
    const own = await file(owner);
    expect(own).toMatchObject({ requests: [{ asked: 'access', answerBy: '2026-02-04' }], hull: 'U2' });
    expect(own.stays.join(' ')).toContain('Backups');
    const headers = await service.signedIn();
    const given = await fetch(`${service.url}/api/owners/${owner}/data.json`, { headers });
    expect(given.headers.get('content-disposition')).toContain('attachment');
    expect(await given.json()).toEqual(own);
    const table = await (await fetch(`${service.url}/api/owners/${owner}/data.csv`, { headers })).text();
    expect(table).toContain('"detail.name","Perrin Oakhollow"');
    expect(table).toContain(`"detail.address","'=1+1 Slip"`);
  });

  it('is listed over all hulls, or for one, with what keeps it', async () => {
    const { items } = await shop.read<OwnersPage>('/api/owners?hull=K1');
    expect(items).toMatchObject([{ hull: 'K1', state: 'narrowed', name: null, keptUntil: expect.any(String) }]);
    const all = await shop.read<OwnersPage>('/api/owners?limit=2');
    expect(all.items).toHaveLength(2);
    expect(all.next).not.toBeNull();
  });
});
