import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { PartView } from '@hull-record/contracts';
import { axeFindings } from '../support/web/axe.js';
import sharp from 'sharp';
import { Shop } from '../support/shop.js';
import { REPAIRED } from '../support/write-samples-claims.js';
import { seeNotRead } from './not-read.js';
import { comesTrue } from '../support/web/comes-true.js';
import { clearStage, close, open, page, rowsOf, service, setStage, watched } from './stage.js';

const HULL = '/hulls/86-1';
const OPENED = `${HULL}?layer=86-1-H/L1`;
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

beforeAll(async () => {
  await setStage();
  const shop = new Shop(service);
  const { layers } = await shop.read<PartView>('/api/parts/86-1-H');
  await shop.correct(layers[0]?.record?.id ?? '', { kind: 'layer record', note: 'sprayed in two passes' });
  await shop.act('/api/parts/86-1-H/touch-ups', {
    spots: [{ zone: 'port topside', kind: 'pit', count: 4 }],
    doneBy: ['PAT-1'],
    note: 'before the deck went on',
  });
  await shop.act('/api/hulls/86-1/fitted-items', { what: 'Outboard engine', serial: '=SN-1', customerSupplied: true });
}, 120_000);
afterAll(clearStage);

const record = () => page.locator('.opened');

describe('a repair that was done elsewhere', () => {
  it('says where, and from whom that is known, and that nobody of the plant saw it', async () => {
    const shop = new Shop(service);
    const defect = await shop.defect('86-5-H');
    const outside = { at: 'Calder Bay Yard', toldBy: 'invoice 12', material: 'epoxy, two coats' };
    await shop.repair('86-5-H', [defect], { doneBy: [], outside });
    await open('/hulls/86-5');
    await page.getByText('Outside repair at Calder Bay Yard, not witnessed by the plant; told by invoice 12').waitFor();
    await page.getByText('epoxy, two coats').waitFor();
    expect(watched.complaints).toEqual([]);
    await close();
  });
});

describe('a repair that a dealer reported', () => {
  it('says which dealer told it, when it was done and with what, and shows its photos', async () => {
    const shop = new Shop(service);
    await shop.act('/api/people', { badge: 'D-NLM', name: 'Desk', roles: ['dealer'], dealer: 'NLM' });
    await shop.act('/api/hulls/86-5/life', { what: 'at dealer', dealer: 'NLM' });
    const own = '/api/own-hulls/86-5/outside-repairs';
    const repair = await shop.act(own, { ...REPAIRED, enteredBy: 'D-NLM' });
    const photo = await sharp({ create: { width: 60, height: 40, channels: 3, background: '#a0b0c0' } })
      .png()
      .toBuffer();
    const form = shop.envelope({ enteredBy: 'D-NLM', shows: 'finished' });
    expect((await shop.postPhoto(`${own}/${repair}/photos`, form, photo)).status).toBe(201);
    await open('/hulls/86-5');
    const row = page.getByRole('row', { name: /not witnessed by the plant; told by work sheet 118/ });
    await row.waitFor();
    expect(await row.textContent()).toMatch(
      /Reported by dealer NLM. Done: 2026-01-05. Material, as told: vinyl ester of the yard. Evidence: work sheet, photos. Note: struck a piling/,
    );
    await comesTrue(page, '[...document.images].some((image) => image.naturalWidth > 0)');
    expect(await row.locator('img').count()).toBe(1);
    expect(watched.complaints).toEqual([]);
    await close();
  });

  it('says the same to who judges it at the station', async () => {
    await open('/station/bay/86-5-H/judge/R2');
    await page.getByText('not witnessed by the plant; told by work sheet 118').waitFor();
    await comesTrue(page, '[...document.images].some((image) => image.naturalWidth > 0)');
    expect(watched.complaints).toEqual([]);
    await close();
  });
});

describe('the record of a layer', () => {
  it('opens when its band is touched, in an address of its own, and closes', async () => {
    await open(HULL);
    await page.getByRole('button', { name: 'Open the record of Gel coat' }).click();
    await record().getByRole('heading', { name: 'L1 Gel coat' }).waitFor();
    expect(await page.evaluate('document.activeElement.textContent')).toBe('L1 Gel coat');
    expect(new URL(page.url()).searchParams.get('layer')).toBe('86-1-H/L1');
    await page.getByRole('button', { name: 'Record of L2' }).click();
    await record().getByRole('heading', { name: 'L2 Skin coat' }).waitFor();
    expect(await record().count()).toBe(1);
    await record().getByRole('button', { name: 'Close the record' }).click();
    await record().waitFor({ state: 'detached' });
    await close();
  });

  it('draws readings with their limits and numbers, says them in a sentence, and lists them', async () => {
    await open(OPENED);
    const plot = record().locator('.plot');
    await plot.getByText('wet film: 3 spots from 16 to 20 mil; none outside.').waitFor();
    expect(await plot.locator('.limit').count()).toBe(2);
    expect(await plot.locator('text').allTextContents()).toEqual(
      expect.arrayContaining(['16 mil', '20 mil', '1', '2', '3']),
    );
    expect(await plot.locator('.forbidden').count()).toBe(2);
    expect(await record().getByRole('listitem').filter({ hasText: 'mil' }).count()).toBe(3);
    expect(await rowsOf('What was used in Gel coat').allInnerTexts()).toEqual([
      expect.stringMatching(/G-1[^]*18 kg[^]*weighed/),
    ]);
    await close();
  });

  it('shows that it was corrected, as such: every version, with the reason', async () => {
    await open(OPENED);
    const versions = rowsOf('Every version of this record, the one that stands among them');
    await versions.nth(1).waitFor();
    expect(await versions.count()).toBe(2);
    const all = (await versions.allInnerTexts()).join(' ');
    expect(all).toMatch(/as it really was/);
    expect(all).toMatch(/stands/);
    expect(await record().getByText('sprayed in two passes').count()).toBe(1);
    await close();
  });

  it('of a layer that is not made says so', async () => {
    await open('/hulls/86-6?layer=86-6-H/L1');
    await record().getByText('This layer is not made yet').waitFor();
    await close();
  });
});

describe('the page of a hull', () => {
  it('has touch-ups, what is fitted, and its papers in each cut', async () => {
    await open(HULL);
    expect(oneLine(await rowsOf('Touch-ups of 86-1-H').first().innerText())).toMatch(
      /^T1 4 × Pit \(pinhole\).*by PAT-1 before the deck went on/,
    );
    expect(oneLine(await rowsOf('Items by serial number, fitted or removed').first().innerText())).toMatch(
      /^Outboard engine =SN-1/,
    );
    for (const [name, cut] of [
      ['For the plant', 'internal'],
      ['For the dealer', 'dealer'],
      ['For an outside expert', 'expert'],
    ] as const) {
      const address = await page.getByRole('link', { name }).getAttribute('href');
      expect(address).toBe(`/api/hulls/86-1/build-record.pdf?cut=${cut}`);
      expect((await page.request.get(new URL(address ?? '', page.url()).href)).headers()['content-type']).toContain(
        'application/pdf',
      );
    }
    await close();
  });

  it.each([
    [OPENED, '**/api/facts/*/versions', 'the versions of the record'],
    [HULL, '**/api/hulls/*/certificates', 'Certificate'],
    [HULL, '**/api/fitted-items?**', 'the items fitted to 86-1'],
  ])('says that a request failed: %s, %s', async (address, path, what) => {
    await seeNotRead(address, path, what);
  });

  it.each([
    ['en-US', { viewport: { width: 1280, height: 800 } }],
    ['es-MX', { ...PHONE, colorScheme: 'dark' as const }],
  ])('is without a finding of the accessibility checker with a record open: %s', async (locale, options) => {
    await open(OPENED, { ...options, locale });
    await record().locator('.plot').waitFor();
    await page.waitForLoadState('networkidle');
    expect(await axeFindings(page)).toEqual([]);
    await close();
  });
});

describe('the list of hulls', () => {
  it('of ten thousand holds as many nodes after many pages as after a few', async () => {
    await open('/settings');
    const begun = Array.from({ length: 10_000 }, (_, i) => hullOf(i));
    await page.route('**/api/hulls?**', (route) => {
      const query = new URL(route.request().url()).searchParams;
      const from = Number(query.get('cursor') ?? 0);
      const to = from + Number(query.get('limit'));
      return route.fulfill({ json: { items: begun.slice(from, to), next: to < begun.length ? String(to) : null } });
    });
    await page.goto(new URL('/hulls', page.url()).href);
    const counts: number[] = [];
    for (let pages = 1; pages <= 12; pages += 1) {
      await page.getByText(`The first ${pages * 50} hulls.`).waitFor();
      counts.push(await page.evaluate<number>('document.querySelectorAll("main *").length'));
      await page.getByRole('button', { name: 'Show more hulls' }).click();
    }
    expect(Math.max(...counts)).toBeLessThan(5_000);
    expect(counts.at(-1)).toBeLessThanOrEqual((counts[4] ?? 0) + 20);
    const earlier = page.getByRole('button', { name: 'Show earlier hulls' });
    while ((await earlier.count()) > 0) await earlier.click();
    expect(await page.getByRole('link', { name: 'H-00000' }).count()).toBe(1);
    await page.getByRole('button', { name: 'Show later hulls' }).click();
    expect(await page.getByRole('link', { name: 'H-00000' }).count()).toBe(0);
    await watched.close();
  });
});

const oneLine = (text: string): string => text.replace(/\s+/g, ' ');

const hullOf = (i: number) => ({
  ...{
    id: `00000000-0000-4000-8000-${String(i).padStart(12, '0')}`,
    number: `H-${String(i).padStart(5, '0')}`,
    hin: null,
  },
  ...{ model: 'TS86', modelName: 'TS 86', startedAt: '2026-01-05T07:00:00.000Z', layersMade: 1, layersScheduled: 3 },
  ...{ openDefects: 0, now: { what: 'part started', dealer: null, since: '2026-01-05T07:00:00.000Z' } },
});
