import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkFiles } from '../../apps/service/src/verify/check-files.js';
import { issued, releasedHull } from '../support/certificates.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

let service: RunningService;
beforeAll(async () => {
  service = await startService();
}, 120_000);
afterAll(() => service.close());

it('names the file of a certificate that was altered, and one that is missing', async () => {
  const shop = await new Shop(service).open();
  const { sha256 } = await issued(shop, await releasedHull(shop, 'V-1'));
  const folder = join(service.dataDir, 'photos');
  const look = async () => (await checkFiles(service.db.manager, folder)).faults;
  expect(await look()).toEqual([]);
  const file = join(folder, (sha256 ?? '').slice(0, 2), sha256 ?? '');
  writeFileSync(file, 'another');
  expect(await look()).toMatchObject([{ what: 'changed', words: expect.stringContaining(sha256 ?? '') }]);
  rmSync(file);
  expect(await look()).toMatchObject([{ what: 'removed', words: expect.stringContaining('is missing') }]);
});
