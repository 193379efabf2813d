import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { createHash, randomUUID } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import type { DefectView } from '@hull-record/contracts';
import { blank, taken } from '../support/photos.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop, type Answer } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
let defect: string;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.startHull('A');
  defect = await shop.defect('A-H');
});
afterAll(() => service.close());

const sha256 = (data: Buffer): string => createHash('sha256').update(data).digest('hex');

const add = (photo: Buffer | undefined, name?: string): Promise<Answer> =>
  shop.postPhoto(`/api/defects/${defect}/photos`, shop.envelope(), photo, name);

const shown = async (id: string): Promise<{ headers: Headers; bytes: Buffer }> => {
  const answer = await fetch(`${service.url}/api/photos/${id}`, { headers: await service.signedIn() });
  expect(answer.status).toBe(200);
  return { headers: answer.headers, bytes: Buffer.from(await answer.arrayBuffer()) };
};

describe('a photo of a defect', () => {
  it('is kept as it came, under its hash, and shown without who took it and where', async () => {
    const original = await taken(60, 40);
    expect(original.includes('Somebody Private')).toBe(true);
    expect((await sharp(original).metadata()).exif).toBeDefined();
    const { status, body } = await add(original);
    expect([status, body.result]).toEqual([201, { originalSha256: sha256(original), width: 40, height: 60 }]);
    const file = await readFile(join(service.dataDir, 'photos', sha256(original).slice(0, 2), sha256(original)));
    expect(file.equals(original)).toBe(true);
    const { headers, bytes } = await shown(body.id);
    expect(headers.get('content-type')).toBe('image/jpeg');
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(bytes.includes('Somebody Private')).toBe(false);
    const { exif, xmp, iptc, icc, format, width, height } = await sharp(bytes).metadata();
    expect({ exif, xmp, iptc, icc, format }).toEqual({ format: 'jpeg' });
    // Upright, as the camera was held.
    expect([width, height]).toEqual([40, 60]);
  });

  it('is shown with the defect, in the order in which photos were added', async () => {
    const own = await shop.defect('A-H');
    const ids: string[] = [];
    for (const side of [10, 11, 12]) {
      const photo = await blank(side, side).png().toBuffer();
      ids.push((await shop.postPhoto(`/api/defects/${own}/photos`, shop.envelope(), photo)).body.id);
    }
    const { photos } = await shop.read<DefectView>(`/api/defects/${own}`);
    expect(photos.map(({ id }) => id)).toEqual(ids);
    await shop.correct(String(ids[0]));
    expect((await shop.read<DefectView>(`/api/defects/${own}`)).photos).toHaveLength(2);
    expect(
      (await fetch(`${service.url}/api/photos/${String(ids[0])}`, { headers: await service.signedIn() })).status,
    ).toBe(404);
  });

  it.each(['png', 'webp', 'jpeg'] as const)(
    'may be a %s, whatever its name says, and is shown as JPEG',
    async (format) => {
      const { body, status } = await add(await blank(30, 20).toFormat(format).toBuffer(), 'notes.txt');
      expect(status).toBe(201);
      expect((await sharp((await shown(body.id)).bytes).metadata()).format).toBe('jpeg');
    },
  );

  it('that is large is shown smaller, and kept as large as it was', async () => {
    const { body } = await add(await blank(5_000, 2_500).jpeg().toBuffer());
    expect(body.result).toMatchObject({ width: 5_000, height: 2_500 });
    const { width, height } = await sharp((await shown(body.id)).bytes).metadata();
    expect([width, height]).toEqual([2_400, 1_200]);
  });

  it('that is added to two defects is one file', async () => {
    const photo = await blank(17, 17).png().toBuffer();
    const both = await Promise.all([add(photo), add(photo)]);
    expect(both.map(({ status }) => status)).toEqual([201, 201]);
    expect(new Set(both.map(({ body }) => String(body.result['originalSha256']))).size).toBe(1);
  });
});

describe('the file of a photo', () => {
  it('is asked for when it is missing', async () => {
    expect(await add(undefined)).toMatchObject({ status: 400, body: { errors: [{ pointer: '/photo' }] } });
  });

  it('that is damaged on the disk is not shown, and is whole again when the same photo comes again', async () => {
    const photo = await blank(23, 19).jpeg().toBuffer();
    const { body } = await add(photo);
    const [row] = await service.asOwner<{ name: string }>(
      `select shown_sha256 as name from fact.photo where id = '${body.id}'`,
    );
    const name = row?.name ?? '';
    await writeFile(join(service.dataDir, 'photos', name.slice(0, 2), name), 'damaged');
    const answer = await shop.get(`/api/photos/${body.id}`);
    expect(answer).toMatchObject({ status: 404, body: { detail: expect.stringContaining('no readable file') } });
    expect((await add(photo)).status).toBe(201);
    expect(sha256((await shown(body.id)).bytes)).toBe(name);
  });
});

describe('the record that comes with a photo', () => {
  it('is asked for when it is no JSON, and its fields are named like those of any record', async () => {
    const photo = await blank(9, 9).png().toBuffer();
    const path = `/api/defects/${defect}/photos`;
    const broken = await shop.postPhoto(path, '{', photo);
    expect(broken).toMatchObject({ status: 400, body: { errors: [{ pointer: '/record' }] } });
    const lacking = await shop.postPhoto(path, shop.envelope({ happenedAt: 'yesterday' }), photo);
    expect(lacking).toMatchObject({ status: 400, body: { errors: [{ pointer: '/happenedAt' }] } });
  });

  it('of another photo under an id that was used is refused', async () => {
    const path = `/api/defects/${defect}/photos`;
    const record = shop.envelope({ id: randomUUID() });
    expect((await shop.postPhoto(path, record, await blank(8, 8).png().toBuffer())).status).toBe(201);
    const other = await shop.postPhoto(path, record, await blank(8, 9).png().toBuffer());
    expect(other).toMatchObject({ status: 409, body: { type: '/problems/client-id-reused' } });
  });
});
