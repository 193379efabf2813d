import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { blank, boastful, noisy, withComment } from '../support/photos.js';
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

const add = (photo: Buffer | undefined, name?: string): Promise<Answer> =>
  shop.postPhoto(`/api/defects/${defect}/photos`, shop.envelope(), photo, name);

/** What is kept: facts, and files. */
const kept = async (): Promise<readonly number[]> => [
  (await service.asOwner('select from fact.photo')).length,
  (await readdir(join(service.dataDir, 'photos'), { recursive: true }).catch(() => [])).length,
];

/** Sends what is refused, and gives the whole problem and what it says of the field; nothing is kept. */
const refusal = async (file: Buffer, name?: string): Promise<{ problem: unknown; detail: string }> => {
  const before = await kept();
  const { status, body } = await add(file, name);
  expect(body).toMatchObject({ type: '/problems/not-a-photo', errors: [{ pointer: '/photo' }] });
  expect(status).toBe(415);
  expect(await kept()).toEqual(before);
  return { problem: body, detail: String(body['errors']?.[0]?.['detail']) };
};

const SCRIPT = '<!doctype html><script>alert(1)</script>';
const svg = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script>1</script></svg>');
const cut = async (format: 'jpeg' | 'png' | 'webp', part: (length: number) => number): Promise<Buffer> => {
  const whole = await noisy(400, 300).toFormat(format).toBuffer();
  return whole.subarray(0, part(whole.length));
};

describe('a file that is no photo', () => {
  it.each<[string, () => Buffer | Promise<Buffer>]>([
    ['an SVG, which can hold a script', () => svg],
    ['an SVG behind a declaration', () => Buffer.concat([Buffer.from('<?xml version="1.0"?>\n'), svg])],
    ['HTML under the name of a photo', () => Buffer.from(SCRIPT)],
    ['a GIF', () => blank(5, 5).gif().toBuffer()],
    ['a TIFF', () => blank(5, 5).tiff().toBuffer()],
    ['nothing at all', () => Buffer.alloc(0)],
  ])('is refused by its content, and told what to send: %s', async (_what, file) => {
    const { detail } = await refusal(await file(), 'photo.jpg');
    expect(detail).toMatch(/send a JPEG, PNG or WebP picture/);
  });

  it.each<[string, () => Buffer | Promise<Buffer>]>([
    ['a JPEG whose start alone is one', () => Buffer.from([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3])],
    ['HTML behind the first bytes of a JPEG', () => Buffer.from(`\xff\xd8\xff\xe0${SCRIPT}`, 'latin1')],
    ['HTML behind the first bytes of a PNG', () => Buffer.from(`\x89PNG\r\n\x1a\n${SCRIPT}`, 'latin1')],
    ['a third of a JPEG', () => cut('jpeg', (length) => length / 3)],
    ['a JPEG without its last two bytes', () => cut('jpeg', (length) => length - 2)],
    ['a third of a PNG', () => cut('png', (length) => length / 3)],
    ['a PNG without its last chunk', () => cut('png', (length) => length - 12)],
    ['a PNG without its last byte', () => cut('png', (length) => length - 1)],
    ['a PNG wider than any decoder takes', () => boastful(2_147_483_647, 2)],
    ['a WebP without its last byte', () => cut('webp', (length) => length - 1)],
  ])('or is damaged is refused, and asked for whole: %s', async (_what, file) => {
    const { detail } = await refusal(await file());
    expect(detail).toMatch(/cut off or damaged: send the whole file again/);
  });
});

describe('a small file that claims to be a very large picture', () => {
  it.each([
    [50_000, 50_000, 2_500],
    [8_001, 10_000, 81],
    [200_000, 500, 100],
  ])('of %i × %i pixels is refused by what it declares, with the limit and the remedy', async (width, height, says) => {
    const file = boastful(width, height);
    expect(file.length).toBeLessThan(100);
    const { problem, detail } = await refusal(file);
    expect(problem).toMatchObject({ width, height, megapixelsAtMost: 80 });
    expect(detail).toBe(
      `is ${width} × ${height} pixels, ${says} megapixels, and at most 80 are taken: send a copy with fewer pixels`,
    );
  });

  it('is told apart from one that is as large as is taken, and damaged', async () => {
    const { detail } = await refusal(boastful(8_000, 10_000));
    expect(detail).toMatch(/cut off or damaged/);
  });
});

describe('a file that is larger than 30 MB', () => {
  it('is refused before it is looked at, with the limit and the remedy', async () => {
    const answer = await add(Buffer.alloc(30 * 1024 * 1024 + 1, 0xff));
    expect(answer).toMatchObject({
      status: 413,
      body: {
        ...{ type: '/problems/too-large', bytesAtMost: 31_457_280 },
        errors: [{ pointer: '/photo', detail: expect.stringMatching(/larger than 30 MB.*send a copy/) }],
      },
    });
  });

  it('is looked at when it is just as large', async () => {
    expect((await add(Buffer.alloc(30 * 1024 * 1024, 0xff))).status).toBe(415);
  });
});

describe('a form that holds something else', () => {
  it.each([
    ['two photos', '/photo', (form: FormData) => form.append('photo', new Blob(['x']), 'another.jpg')],
    ['a file of another name', '/photo', (form: FormData) => form.append('picture', new Blob(['x']), 'another.jpg')],
    ['a record that is too long', '/record', (form: FormData) => form.set('record', 'x'.repeat(70_000))],
  ])('is refused for %s, naming %s and what to send', async (_what, pointer, change) => {
    const form = new FormData();
    form.append('record', '{}');
    form.append('photo', new Blob(['x']), 'one.jpg');
    change(form);
    const path = `/api/defects/018f0000-0000-7000-8000-00000000abcd/photos`;
    const headers = await service.signedIn();
    const answer = await fetch(`${service.url}${path}`, { method: 'POST', headers, body: form });
    expect(answer.status).toBe(400);
    const remedy = expect.stringMatching(/: send a form with one field "record".* and one file "photo"$/);
    expect(await answer.json()).toMatchObject({
      type: '/problems/invalid-request',
      errors: [{ pointer, detail: remedy }],
    });
  });
});

describe('a photo that is HTML to whoever looks for it', () => {
  it('is served as the picture alone: drawn anew, of a fixed type that no browser guesses at', async () => {
    const jpeg = await blank(40, 30).jpeg().toBuffer();
    const file = Buffer.concat([withComment(jpeg, SCRIPT), Buffer.from(SCRIPT)]);
    expect(file.toString('latin1').split(SCRIPT)).toHaveLength(3);
    const { status, body } = await add(file, 'photo.html');
    expect(status).toBe(201);
    const answer = await fetch(`${service.url}/api/photos/${body.id}`, {
      headers: { accept: 'text/html', ...(await service.signedIn()) },
    });
    expect(answer.headers.get('content-type')).toBe('image/jpeg');
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
    expect(answer.headers.get('content-security-policy')).toContain("default-src 'self'");
    const bytes = Buffer.from(await answer.arrayBuffer());
    expect(bytes.toString('latin1')).not.toContain('script');
    expect(await sharp(bytes).metadata()).toMatchObject({ format: 'jpeg', width: 40, height: 30 });
  });
});

describe('a picture that can be seen through', () => {
  it('is shown on white', async () => {
    const clear = sharp({ create: { width: 20, height: 20, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } } });
    const { body } = await add(await clear.png().toBuffer());
    const answer = await fetch(`${service.url}/api/photos/${body.id}`, { headers: await service.signedIn() });
    const { dominant } = await sharp(Buffer.from(await answer.arrayBuffer())).stats();
    expect(Math.min(dominant.r, dominant.g, dominant.b)).toBeGreaterThan(240);
  });
});
