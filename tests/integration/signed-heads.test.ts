import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { checkHead, headHash, readHead, type SignedTreeHead } from '@hull-record/evidence';
import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { byFolder, byMail, byWebhook } from '../../apps/service/src/platform/journal/head-ways.js';
import { KeyRing } from '../../apps/service/src/platform/journal/key-ring.js';
import { SendHeads } from '../../apps/service/src/platform/journal/send-heads.js';
import { SignHead } from '../../apps/service/src/platform/journal/sign-head.js';
import { hearMail, hearPosts } from '../support/hear-heads.js';
import { sealEverything } from '../support/seal-everything.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
let keys: KeyRing;
let folder: string;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  keys = new KeyRing(join(service.dataDir, 'keys'));
  folder = mkdtempSync(join(tmpdir(), 'hull-record-heads-'));
});
afterAll(async () => {
  await service.close();
  rmSync(folder, { recursive: true });
});

let made = 0;

/** Signs a head after something was recorded. */
const nextHead = async (): Promise<SignedTreeHead> => {
  made += 1;
  await shop.act('/api/dealers', { code: `H-${made}`, name: 'Invented', place: 'Somewhere' });
  await sealEverything(service);
  const [plant] = await service.asOwner<{ id: string }>('select id from fact.plant');
  const head = await service.get(SignHead).of(plant?.id ?? '');
  if (head === null) throw new Error('Nothing is sealed.');
  return head;
};

describe('the keys of the journal', () => {
  it('are made at the first run, in a file that its owner alone can read, and stay the same', () => {
    const { keyId, file } = keys.newest();
    expect(statSync(file).mode & 0o777).toBe(0o600);
    expect(keys.newest().keyId).toBe(keyId);
    expect(readdirSync(join(service.dataDir, 'keys'))).toEqual(['journal-0001.pem']);
  });

  it.each([0o640, 0o604, 0o660])('are refused when others can read them (%o)', (mode) => {
    const { file } = keys.newest();
    chmodSync(file, mode);
    expect(() => keys.newest()).toThrow('others than its owner can read or change this key');
    chmodSync(file, 0o600);
  });
});

describe('a signed head', () => {
  it('holds together, names the head before it, and is not signed again while nothing was sealed', async () => {
    const first = await nextHead();
    expect([checkHead(first), first.plant]).toEqual([null, 'TARROW']);
    const second = await nextHead();
    expect(checkHead(second)).toBeNull();
    expect([second.previous, second.keyId]).toEqual([headHash(first), first.keyId]);
    expect(second.size).toBeGreaterThan(first.size);
    await service.get(SignHead).all();
    const rows = await service.asOwner<{ line: string }>('select line from fact.tree_head order by number desc');
    expect(readHead(rows[0]?.line ?? '')).toEqual(second);
  });

  it('is signed by the newest key from its making on; the old keys stay', async () => {
    const before = await nextHead();
    const added = keys.add();
    const after = await nextHead();
    expect([after.keyId, after.previous]).toEqual([added.keyId, headHash(before)]);
    expect(keys.all().map(({ keyId }) => keyId)).toEqual([before.keyId, after.keyId]);
  });
});

describe('heads that are sent out', () => {
  it('arrive each once, in order, in a folder, at a webhook and by mail', async () => {
    const [posts, mails] = [await hearPosts(), await hearMail()];
    const mail = { smtpUrl: mails.url, from: 'plant@shop.example', to: 'counsel@office.example' };
    const send = new SendHeads(service.db, [byFolder(folder), byWebhook(posts.url), byMail(mail)]);
    await nextHead();
    await send.run();
    const head = await nextHead();
    await send.run();
    await send.run();
    await Promise.all([posts.close(), mails.close()]);
    const rows = await service.asOwner<{ line: string }>('select line from fact.tree_head order by number');
    const lines = rows.map(({ line }) => line);
    const files = readdirSync(folder).sort();
    expect(files.map((name) => readFileSync(join(folder, name), 'utf8'))).toEqual(lines.map((line) => `${line}\n`));
    expect(posts.heard).toEqual(lines);
    expect(mails.heard).toHaveLength(lines.length);
    expect(mails.heard.at(-1)).toContain(`head ${lines.length} of the journal of plant TARROW`);
    const attached =
      /filename=head-TARROW-\d{8}\.txt\r\n\r\n([\s\S]*?)\r?\n?--/.exec(mails.heard.at(-1) ?? '')?.[1] ?? '';
    expect(readHead(Buffer.from(attached, 'base64'))).toEqual(head);
  });

  it('wait for a webhook that does not answer, and arrive when it does', async () => {
    const posts = await hearPosts();
    posts.answer(503);
    const send = new SendHeads(service.db, [byWebhook(posts.url)]);
    await send.run();
    const trouble = await service.asOwner('select from work.head_sent where trouble is not null');
    expect([trouble.length, posts.heard.length]).toEqual([1, 1]);
    posts.answer(204);
    await send.run();
    await posts.close();
    const heads = await service.asOwner('select from fact.tree_head');
    expect(posts.heard).toHaveLength(heads.length + 1);
    expect(await service.asOwner('select from work.head_sent where trouble is not null')).toEqual([]);
  });
});
