import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ClaimView } from '@hull-record/contracts';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { checkFiles } from '../../apps/service/src/verify/check-files.js';
import { PhotoStore } from '../../apps/service/src/platform/photos/photo-store.js';
import { PrintCopies } from '../../apps/service/src/platform/photos/print-copies.js';
import { noisy } from '../support/photos.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop, type Answer, type Fields } from '../support/shop.js';
import { FILED } from '../support/write-samples-claims.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  for (const hull of ['R1', 'R2', 'R3']) await shop.startHull(hull);
}, 120_000);
afterAll(() => service.close());

const files = () => checkFiles(service.db.manager, join(service.dataDir, 'photos'));
const until = async (holds: () => boolean | Promise<boolean>): Promise<void> => {
  for (let i = 0; i < 200 && !(await holds()); i += 1) await new Promise((resolve) => setTimeout(resolve, 50));
  expect(await holds()).toBe(true);
};

const BOX = { x: 0.25, y: 0.25, width: 0.25, height: 0.5 };
const stored = (name: string): boolean => existsSync(join(service.dataDir, 'photos', name.slice(0, 2), name));

describe('a photo that shows somebody', () => {
  const add = async (
    hull: string,
    seed: number,
  ): Promise<{ id: string; sent: Fields; photo: Buffer; claim: string }> => {
    const claim = await shop.act(`/api/hulls/${hull}/claims`, { ...FILED, spots: [] });
    const photo = await noisy(80, 40, seed).jpeg().toBuffer();
    const sent = shop.envelope({ shows: 'whole side' });
    const { body } = await shop.postPhoto(`/api/claims/${claim}/photos`, sent, photo);
    return { id: body.id, sent, photo, claim };
  };
  const shown = async (id: string, path = ''): Promise<Buffer> => {
    const answer = await fetch(`${service.url}/api/photos/${id}${path}`, { headers: await service.signedIn() });
    expect(answer.status).toBe(200);
    return Buffer.from(await answer.arrayBuffer());
  };
  const blacked = (id: string, more: Fields = {}): Promise<Answer> =>
    shop.post(`/api/photos/${id}/redactions`, shop.envelope({ areas: [BOX], reason: 'shows a face', ...more }));
  const namesOf = async (id: string): Promise<{ original: string; shown: string }> => {
    const [row] = await service.asOwner<{ original: string; shown: string }>(
      `select original_sha256 as original, shown_sha256 as shown from fact.claim_photo where id = '${id}'`,
    );
    return row ?? { original: '', shown: '' };
  };
  const lightOf = async (jpeg: Buffer, left: number, top: number): Promise<number> => {
    return Math.max(...(await sharp(jpeg).extract({ left, top, width: 4, height: 4 }).raw().toBuffer()));
  };

  it('is shown blacked out from then on, and every file of it as it was is erased', async () => {
    const { id, claim, sent, photo } = await add('R1', 1);
    const names = await namesOf(id);
    expect(stored(names.original) && stored(names.shown)).toBe(true);
    const copies = service.get(PrintCopies);
    await copies.of([{ originalSha256: names.original, shownSha256: names.shown, redactedOn: null }]);
    expect(await blacked(id)).toMatchObject({
      ...{ status: 201, body: { result: { original: 'erased', keptBecause: null, alsoShownAs: [] } } },
    });
    await until(() => !stored(names.original) && !stored(names.shown));
    const copy = await shown(id);
    // 80 by 40 px: the area is from 20 to 40 across and from 10 to 30 down.
    expect(await lightOf(copy, 26, 16)).toBeLessThan(24);
    expect(await lightOf(copy, 60, 16)).toBeGreaterThan(100);
    const print = await copies.of([
      { originalSha256: names.original, shownSha256: names.shown, redactedOn: '2026-01-01' },
    ]);
    expect([...print.keys()]).toEqual([]);
    expect((await shop.read<ClaimView>(`/api/claims/${claim}`)).photos).toMatchObject([
      { id, redactedOn: expect.stringMatching(/^20/), originalSha256: names.original },
    ]);
    expect(await files()).toMatchObject({ faults: [], erased: 2 });

    // The tablet sends it once more: it does not come back.
    expect((await shop.postPhoto(`/api/claims/${claim}/photos`, sent, photo)).status).toBe(200);
    await until(() => !stored(names.original) && !stored(names.shown));
    expect((await files()).faults).toEqual([]);
    // Put back behind the service, it is named.
    await service.get(PhotoStore).keep(photo);
    expect((await files()).faults).toMatchObject([{ what: 'added', words: expect.stringContaining('erased') }]);
    await service.get(PhotoStore).erase(names.original);
  });

  it('does not come back when it is of material that nobody could name, and the tablet sends it once more', async () => {
    const unidentified = { role: 'resin', looks: 'amber, no label' };
    const amount = { quantity: '3', unit: 'kg', basis: 'weighed' };
    const entry = await shop.layer('R2', 'L1', [{ unidentified, amount }]);
    const photo = await noisy(80, 40, 7).jpeg().toBuffer();
    const [path, sent] = [`/api/unidentified/${entry}/photos`, shop.envelope({ line: 0 })];
    const { body } = await shop.postPhoto(path, sent, photo);
    const { originalSha256 } = body.result as unknown as { originalSha256: string };
    expect(stored(originalSha256)).toBe(true);
    expect((await blacked(body.id)).body.result).toMatchObject({ original: 'erased' });
    await until(() => !stored(originalSha256));
    expect((await shop.postPhoto(path, sent, photo)).status).toBe(200);
    await until(() => !stored(originalSha256));
    expect((await files()).faults).toEqual([]);
  });

  it('is blacked out further on the copy that is shown, which is erased in its turn', async () => {
    const { id } = await add('R1', 2);
    await blacked(id);
    const first = await shown(id);
    const again = await blacked(id, { areas: [{ x: 0.75, y: 0, width: 0.25, height: 1 }] });
    expect(again.status).toBe(201);
    const second = await shown(id);
    expect(await lightOf(second, 26, 16)).toBeLessThan(24);
    expect(await lightOf(second, 70, 10)).toBeLessThan(24);
    expect(second.equals(first)).toBe(false);
    await until(async () => (await files()).faults.length === 0);
  });

  it('is kept apart under a legal hold, for warranty and administrator alone, and erased when it has ended', async () => {
    const { id } = await add('R3', 3);
    const names = await namesOf(id);
    const hold = await shop.act('/api/hulls/R3/legal-holds', { reason: 'proceedings' });
    expect((await blacked(id)).body.result).toMatchObject({
      original: 'kept apart',
      keptBecause: 'Legal hold: proceedings',
    });
    await until(() => !stored(names.shown));
    expect(stored(names.original)).toBe(true);
    expect(await lightOf(await shown(id), 26, 16)).toBeLessThan(24);
    expect(await lightOf(await shown(id, '/kept-original'), 26, 16)).toBeGreaterThan(100);
    const inspector = await service.signedIn('INS-1');
    expect((await fetch(`${service.url}/api/photos/${id}/kept-original`, { headers: inspector })).status).toBe(403);
    expect((await files()).faults).toEqual([]);
    await shop.act(`/api/legal-holds/${hold}/endings`, { reason: 'closed' });
    expect((await blacked(id, { areas: [] })).body.result).toMatchObject({ original: 'erased' });
    await until(() => !stored(names.original));
    expect((await shop.get(`/api/photos/${id}/kept-original`)).status).toBe(404);
    expect((await files()).faults).toEqual([]);
  });

  it('is kept where another photo is of the same file, and the receipt names that one', async () => {
    const [one, other] = [await add('R1', 4), await add('R2', 4)];
    const names = await namesOf(one.id);
    expect((await blacked(one.id)).body.result).toMatchObject({ alsoShownAs: [other.id] });
    expect(await lightOf(await shown(other.id), 26, 16)).toBeGreaterThan(100);
    expect((await blacked(other.id)).body.result).toMatchObject({ alsoShownAs: [] });
    await until(() => !stored(names.original));
  });

  it('needs an area, and a photo', async () => {
    const { id } = await add('R1', 5);
    expect(await blacked(id, { areas: [] })).toMatchObject({ status: 422, body: { type: '/problems/no-area' } });
    expect((await blacked('00000000-0000-4000-8000-000000000099')).status).toBe(404);
  });
});
