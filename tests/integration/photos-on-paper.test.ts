import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { createHash } from 'node:crypto';
import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readAsOne } from '../../apps/service/src/platform/database/read-as-one.js';
import { loadNewestOfPart } from '../../apps/service/src/records/papers/newest-of-part.js';
import { readAlternatives, readImages } from '../support/papers/read-images.js';
import { readPaper, type AnsweredPaper } from '../support/papers/read-paper.js';
import { blank, noisy, taken } from '../support/photos.js';
import { printed } from '../support/read-record.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop, type Answer } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
let number = 0;
let hull: string;
let defect: string;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
beforeEach(async () => {
  hull = `P${(number += 1)}`;
  await shop.startHull(hull);
  defect = await shop.defect(`${hull}-H`);
});
afterAll(() => service.close());

const sha256 = (data: Buffer): string => createHash('sha256').update(data).digest('hex');

const add = async (photo: Buffer, of = defect): Promise<Answer['body']> => {
  const record = shop.envelope({ enteredBy: 'INS-1', happenedAt: '2026-01-06T14:20:00.000Z' });
  const { status, body } = await shop.postPhoto(`/api/defects/${of}/photos`, record, photo);
  expect(status).toBe(201);
  return body;
};

const record = (query = ''): Promise<AnsweredPaper> =>
  readPaper(service, `/api/hulls/${hull}/build-record.pdf${query}`);
const order = (): Promise<AnsweredPaper> => readPaper(service, `/api/parts/${hull}-H/repair-order.pdf`);

const pathOf = (name: string): string => join(service.dataDir, 'photos', name.slice(0, 2), name);
const forgetCopies = (): Promise<void> => rm(join(service.dataDir, 'print-copies'), { recursive: true, force: true });
const shownOf = async (photo: string): Promise<string> => {
  const [row] = await service.asOwner<{ name: string }>(
    `select shown_sha256 as name from fact.photo where id = '${photo}'`,
  );
  return row?.name ?? '';
};

describe('photos of a defect on the build record', () => {
  it('print upright with number, day, badge and digest, and nothing of who took them and where', async () => {
    const original = await taken(600, 400);
    await add(original);
    const { text, bytes } = await record();
    for (const words of [
      ...['1 photo, printed below', 'Photos of the defects', 'Photo 1 of defect D1'],
      ...['taken 6 Jan 2026 09:20 UTC−5, by INS-1', `SHA-256 ${sha256(original).slice(0, 16)} …`, sha256(original)],
    ]) {
      expect(text).toContain(printed(words));
    }
    const [image, ...others] = await readImages(bytes);
    expect(others).toEqual([]);
    expect((image?.height ?? 0) / (image?.width ?? 1)).toBeCloseTo(1.5, 2);
    expect(await readAlternatives(bytes)).toContainEqual(expect.stringContaining(sha256(original)));
    for (const cut of ['', '?cut=dealer', '?cut=expert'])
      expect((await record(cut)).bytes.toString('latin1')).not.toMatch(/Somebody Private|Exif/);
  });

  it('are in every cut; the dealer reads the role of who took them, the expert a number', async () => {
    await add(await blank(80, 60).png().toBuffer());
    const dealer = await record('?cut=dealer');
    expect(dealer.text).toContain(printed('UTC−5, by inspector SHA-256'));
    const expert = await record('?cut=expert');
    expect(expert.text).toMatch(/UTC−5,byperson\dSHA-256/);
    for (const { bytes, text } of [dealer, expert]) {
      expect(await readImages(bytes)).toHaveLength(1);
      expect(text).not.toContain('INS-1');
      expect((await readAlternatives(bytes)).join()).not.toContain('INS-1');
    }
  });

  it('may be WebP, and one file may show two defects', async () => {
    const photo = await noisy(300, 200).webp().toBuffer();
    await add(photo);
    await add(photo, await shop.defect(`${hull}-H`));
    const { text, bytes } = await record();
    expect(text).toContain(printed('Photo 1 of defect D2'));
    expect(await readImages(bytes)).toHaveLength(2);
  });

  it('of twelve megapixels, each pixel unlike the next, make a paper of less than half a megabyte', async () => {
    const before = (await record()).bytes.length;
    const photo = await noisy(4_000, 3_000).jpeg().toBuffer();
    expect(photo.length).toBeGreaterThan(5_000_000);
    await add(photo);
    expect((await record()).bytes.length - before).toBeLessThan(500_000);
  });

  it('change the moment of the paper; before it stands as it was; withdrawn, they stay among the corrections', async () => {
    const before = await record();
    const first = await add(await blank(50, 40).jpeg().toBuffer());
    const with1 = await record();
    expect(with1.bytes.equals(before.bytes)).toBe(false);
    const second = await add(await blank(40, 50).jpeg().toBuffer());
    expect(await readImages((await record()).bytes)).toHaveLength(2);
    const asOf = encodeURIComponent(String(first['recordedAt']));
    expect((await record(`?asOf=${asOf}`)).bytes.equals(with1.bytes)).toBe(true);
    await shop.correct(second.id);
    const { text, bytes } = await record();
    expect(await readImages(bytes)).toHaveLength(1);
    expect(text).toContain(printed('Photo of D1 of'));
    expect(text).toContain(String(second.result['originalSha256']));
  });
});

describe('the files of photos', () => {
  it('give the same paper when the print copies are gone, cut off, empty or changed', async () => {
    await add(await noisy(900, 700).jpeg().toBuffer());
    const { bytes } = await record();
    expect((await record()).bytes.equals(bytes)).toBe(true);
    await forgetCopies();
    expect((await record()).bytes.equals(bytes)).toBe(true);
    const folder = join(service.dataDir, 'print-copies');
    const [copy = ''] = (await readdir(folder, { recursive: true })).filter((name) => name.includes('-'));
    const whole = await readFile(join(folder, copy));
    const changed = Buffer.from(whole);
    changed[whole.length - 100] = (changed[whole.length - 100] ?? 0) ^ 1;
    for (const damaged of [whole.subarray(0, whole.length / 2), Buffer.alloc(0), changed]) {
      await writeFile(join(folder, copy), damaged);
      expect((await record()).bytes.equals(bytes)).toBe(true);
      expect((await readFile(join(folder, copy))).equals(whole)).toBe(true);
    }
  });

  it('give the same paper when the copy that is shown is damaged and the original is not', async () => {
    const { id } = await add(await noisy(3_000, 200).jpeg().toBuffer());
    const { bytes } = await record();
    await forgetCopies();
    await writeFile(pathOf(await shownOf(id)), 'damaged');
    expect((await record()).bytes.equals(bytes)).toBe(true);
  });

  it('that are missing or damaged print as a notice with the digest, and fail no paper', async () => {
    const original = await blank(70, 50).jpeg().toBuffer();
    const { id } = await add(original);
    await add(await blank(90, 50).jpeg().toBuffer());
    await forgetCopies();
    await rm(pathOf(await shownOf(id)));
    await writeFile(pathOf(sha256(original)), original.subarray(0, 200));
    for (const { text, bytes } of [await record(), await record('?cut=dealer'), await order()]) {
      expect(text).toContain(printed('This photo cannot be printed: its file is missing or damaged.'));
      expect(text).toContain(sha256(original));
      expect(await readImages(bytes)).toHaveLength(1);
    }
  });

  it('print also when no copy can be kept', async () => {
    await add(await blank(60, 50).jpeg().toBuffer());
    await forgetCopies();
    await writeFile(join(service.dataDir, 'print-copies'), 'a file where the folder should be');
    expect(await readImages((await record()).bytes)).toHaveLength(1);
    await forgetCopies();
  });
});

describe('photos on the papers of the bay', () => {
  it('are among the facts whose newest is the moment of the paper, also one that was withdrawn', async () => {
    const newest = async (): Promise<string> => {
      const [part] = await service.asOwner<{ id: string }>(`select id from fact.part where number = '${hull}-H'`);
      return (await readAsOne(service.db, (tx) => loadNewestOfPart(tx, part?.id ?? ''))).toISOString();
    };
    const { id, ...photo } = await add(await blank(20, 20).jpeg().toBuffer());
    expect(await newest()).toBe(photo['recordedAt']);
    await shop.correct(id);
    expect((await newest()) > String(photo['recordedAt'])).toBe(true);
  });

  it('are on the repair order of the defects it is for', async () => {
    const before = await order();
    await add(await noisy(200, 100).jpeg().toBuffer());
    const other = await shop.defect(`${hull}-H`);
    await add(await noisy(100, 100).jpeg().toBuffer(), other);
    const { text, bytes } = await order();
    expect(bytes.equals(before.bytes)).toBe(false);
    expect(text).toContain(printed('Photos of these defects'));
    expect(text).toContain(printed('Photo 1 of defect D1 taken 6 Jan 2026 09:20 UTC−5, by INS-1 SHA-256'));
    expect(await readImages(bytes)).toHaveLength(2);
    const one = await readPaper(service, `/api/parts/${hull}-H/repair-order.pdf?defect=D2`);
    expect(one.text).not.toContain(printed('Photo 1 of defect D1'));
    expect(await readImages(one.bytes)).toHaveLength(1);
  });

  it('are named by their digests on the sheet of the hold points', async () => {
    const photo = await blank(33, 44).jpeg().toBuffer();
    await add(photo);
    const { text, bytes } = await readPaper(service, `/api/parts/${hull}-H/hold-points.pdf`);
    expect(text).toContain(printed(`1 photo, SHA-256 of the original begins ${sha256(photo).slice(0, 12)}`));
    expect(await readImages(bytes)).toEqual([]);
  });
});
