import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { createHash, randomUUID } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { crc32 } from 'node:zlib';
import sharp from 'sharp';
import type { DefectView } from '@hull-record/contracts';
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

const blank = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: { r: 180, g: 190, b: 200 } } });

/** A photo as a telephone takes it: lying on its side, with who took it and where. */
const taken = (width: number, height: number): Promise<Buffer> =>
  blank(width, height)
    .withMetadata({ orientation: 6 })
    .withExifMerge({
      IFD0: { Artist: 'Somebody Private' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '43/1 30/1 0/1' },
    })
    .jpeg()
    .toBuffer();

const shown = async (id: string): Promise<{ headers: Headers; bytes: Buffer }> => {
  const answer = await fetch(`${service.url}/api/photos/${id}`, { headers: await service.signedIn() });
  expect(answer.status).toBe(200);
  return { headers: answer.headers, bytes: Buffer.from(await answer.arrayBuffer()) };
};

const photosKept = async (): Promise<number> => (await service.asOwner('select from fact.photo')).length;

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

const chunk = (type: string, data: Buffer): Buffer => {
  const content = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const frame = Buffer.alloc(8);
  frame.writeUInt32BE(data.length, 0);
  frame.writeUInt32BE(crc32(content), 4);
  return Buffer.concat([frame.subarray(0, 4), content, frame.subarray(4)]);
};

/** A PNG of a few bytes that says it is 40,000 by 40,000 pixels. */
const boastful = (): Buffer => {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(40_000, 0);
  header.writeUInt32BE(40_000, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('IDAT', Buffer.alloc(20)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
};

const svg = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script>1</script></svg>');

describe('a file that is no photo', () => {
  it.each<[string, () => Buffer | Promise<Buffer>]>([
    ['an SVG, which can hold a script', () => svg],
    ['HTML under the name of a photo', () => Buffer.from('<!doctype html><script>alert(1)</script>')],
    ['half a JPEG', async () => (await blank(400, 300).jpeg().toBuffer()).subarray(0, 700)],
    ['a JPEG whose start alone is one', () => Buffer.from([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3])],
    ['a picture that claims 40,000 by 40,000 pixels', boastful],
    ['a GIF', () => blank(5, 5).gif().toBuffer()],
    ['nothing at all', () => Buffer.alloc(0)],
  ])('is refused by its content: %s', async (_what, file) => {
    const before = await photosKept();
    const answer = await add(await file());
    expect(answer).toMatchObject({
      status: 415,
      body: { type: '/problems/not-a-photo', errors: [{ pointer: '/photo' }] },
    });
    expect(await photosKept()).toBe(before);
  });

  it('is refused when it is larger than 30 MB, before it is looked at', async () => {
    const answer = await add(Buffer.alloc(31 * 1024 * 1024, 0xff));
    expect(answer).toMatchObject({ status: 413, body: { type: '/problems/too-large' } });
  });

  it('is asked for when it is missing', async () => {
    expect(await add(undefined)).toMatchObject({ status: 400, body: { errors: [{ pointer: '/photo' }] } });
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
