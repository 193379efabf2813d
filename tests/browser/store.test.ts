import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { axeFindings } from '../support/web/axe.js';
import { Hand } from '../support/web/hand.js';
import type { Shop } from '../support/shop.js';
import { clearStage, open, page, rowsOf, service, setStageOf, watched } from './stage.js';

/** A plant on its first day: people, and nothing in the store. */
const firstDay = async (shop: Shop): Promise<void> => {
  for (const [badge, role] of [
    ['REC-1', 'receiving'],
    ['QUA-1', 'quality'],
    ['AUD-1', 'auditor'],
  ])
    await shop.act('/api/people', { badge, name: `Person ${badge}`, roles: [role] });
};
beforeAll(() => setStageOf(firstDay), 120_000);
afterAll(clearStage);

const button = (name: string) => page.getByRole('button', { name, exact: true });
const field = (name: string) => page.getByLabel(name, { exact: true });
const read = async <T>(path: string): Promise<T> =>
  (await (await fetch(`${service.url}${path}`, { headers: await service.signedIn() })).json()) as T;

/** The browser writes of each refusal to its console; nothing else is to be complained of. */
const leave = async (): Promise<void> => {
  await watched.close();
  expect(watched.complaints.filter((each) => !/status of 4\d\d|ERR_FAILED/.test(each))).toEqual([]);
};

const receive = async (hand: Hand, code: string): Promise<void> => {
  // The store's own page, which a link leaves, has a field of the same name.
  await button('Receive it').waitFor();
  await hand.choose(field('Material'), 'RES-VE');
  await hand.type(field('Supplier'), 'Aldermoor Resins');
  await hand.type(field("Supplier's lot"), `S-${code}`);
  await hand.type(field('Our lot code'), code);
  await hand.type(field('How much'), '800');
  await hand.tap(button('Receive it'));
};

describe('receiving on the first day', () => {
  it('registers a material, receives a lot in four drums with the photo of its certificate, and gets the labels', async () => {
    const hand = new Hand();
    await open('/store', {}, 'REC-1');
    await page.getByText('No material is registered yet').waitFor();
    await hand.tap(page.getByRole('link', { name: 'Register a material' }).first());
    await hand.type(field('Code'), 'RES-VE');
    await hand.type(field('Name'), 'Vinyl ester resin');
    await hand.choose(field('Role'), 'resin');
    await hand.tap(button('Register a material'));
    await page.getByText('RES-VE is registered.').waitFor();
    await hand.tap(page.getByRole('link', { name: 'Store' }));
    await hand.tap(page.getByRole('link', { name: 'Receive a lot' }));
    await receive(hand, 'VE-1');
    await page.getByText('Lot VE-1 is received, in quarantine.').waitFor();
    await hand.type(field('How many'), '4');
    await hand.choose(field('Kind'), 'drum');
    await hand.type(field('Place'), 'Bay 2');
    await hand.tap(button('Give them labels'));
    await page.getByText('4 containers of lot VE-1 on record.').waitFor();
    await hand.attach(field('Photo of the certificate'), await certificate());
    await hand.tap(button('Keep the photo'));
    await page.getByText('The photo is kept').waitFor();
    await hand.tap(page.getByRole('link', { name: 'Print their labels' }));
    await hand.tap(button('Make the PDF of 4 labels'));
    await page.getByText('The PDF is made.').waitFor();
    const saving = page.waitForEvent('download');
    await hand.tap(page.getByRole('link', { name: 'Save it' }));
    const pdf = readFileSync(await (await saving).path());
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
    expect(hand.taps).toBeLessThanOrEqual(10);
    expect(hand.fields).toBeLessThanOrEqual(12);
    await leave();
    const { containers, photos } = await read<{ containers: object[]; photos: object[] }>('/api/lots/VE-1/store');
    expect(containers).toMatchObject(
      [1, 2, 3, 4].map((n) => ({ label: `VE-1-${n}`, kind: 'drum', place: 'Bay 2', amount: { kg: 200 } })),
    );
    expect(photos).toHaveLength(1);
  });

  it('mends a refusal: what was typed is there, the field is named, and one lot is recorded', async () => {
    await open('/store/receive', {}, 'REC-1');
    await receive(new Hand(), 'VE-1');
    const alert = page.getByRole('alert').filter({ hasText: 'Not recorded.' });
    await alert.getByText('Our lot code: This lot code is in use: give the lot another.').waitFor();
    expect(await field('Supplier').inputValue()).toBe('Aldermoor Resins');
    expect(await page.evaluate('document.activeElement.name')).toBe('code');
    await field('Our lot code').fill('VE-2');
    await button('Receive it').click();
    await page.getByText('Lot VE-2 is received, in quarantine.').waitFor();
    await leave();
    const { items } = await read<{ items: object[] }>('/api/lots?search=VE-');
    expect(items).toHaveLength(2);
  });

  it('sends the same fact again when the answer was lost, and it is recorded once', async () => {
    await open('/store/receive', {}, 'REC-1');
    const ids: string[] = [];
    await page.route('**/api/lots', async (route) => {
      ids.push((route.request().postDataJSON() as { id: string }).id);
      if (ids.length > 1) return route.continue();
      await route.fetch();
      return route.abort();
    });
    await receive(new Hand(), 'VE-3');
    await page.getByRole('alert').getByText('The service does not answer.').waitFor();
    await button('Receive it').click();
    await page.getByText('Lot VE-3 is received, in quarantine.').waitFor();
    expect(ids).toEqual([ids[0], ids[0]]);
    await leave();
  });
});

describe('what is done with a lot', () => {
  it('is for those whose job it is: an auditor is told for whom', async () => {
    await open('/store/lots/VE-1', {}, 'AUD-1');
    await page.getByText('Release, quarantine, reject: for the roles receiving, quality.').waitFor();
    expect(await page.getByRole('button', { name: 'Record the state' }).count()).toBe(0);
    await leave();
  });

  it('is released by quality in one field and one tap, then held, and the hold is lifted after a confirmation', async () => {
    const hand = new Hand();
    await open('/store/lots/VE-1', {}, 'QUA-1');
    await hand.type(
      page.getByRole('region', { name: 'Release, quarantine, reject' }).getByLabel('Reason'),
      'as certified',
    );
    await hand.tap(button('Record the state'));
    await page.locator('p.verdict').getByText('released', { exact: true }).first().waitFor();
    expect([hand.taps, hand.fields]).toEqual([1, 1]);
    await page.getByText('Place a hold', { exact: true }).click();
    await page.getByRole('region', { name: 'Holds' }).getByLabel('Reason').fill('gel time long');
    await button('Hold it').click();
    await page.getByText('Lift this hold').click();
    const lifting = page.getByRole('region', { name: 'Holds' });
    await lifting.getByLabel('Reason').first().fill('retested');
    await button('Lift it').click();
    await page.getByText('The lot may be used again from now on.').waitFor();
    await page.keyboard.press('Enter');
    expect((await read<{ holds: { lifted: unknown }[] }>('/api/lots/VE-1/store')).holds[0]?.lifted).toBeNull();
    await button('Lift it').click();
    await button('Yes, record it').click();
    await page.getByText('Lifted:').waitFor();
    await leave();
  });

  it('stands first in the order of use, with its containers and their place', async () => {
    await open('/store', {}, 'REC-1');
    await field('Material').selectOption('RES-VE');
    await button('Show').click();
    const rows = rowsOf('Lots in the order of use: first to expire, then first received');
    await rows.first().waitFor();
    expect(await rows.first().innerText()).toMatch(/VE-1[^]*use this one[^]*800 kg[^]*VE-1-1[^]*Bay 2/);
    expect(await rows.nth(1).innerText()).toContain('quarantined');
    await leave();
  });

  it('is without a finding of the accessibility checker while a refusal is shown', async () => {
    await open('/store/receive', {}, 'REC-1');
    await button('Receive it').click();
    await page.getByRole('alert').getByText('Not recorded.').waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await leave();
  });
});

const certificate = (): Promise<Buffer> =>
  sharp({ create: { width: 40, height: 60, channels: 3, background: '#f0ece0' } })
    .png()
    .toBuffer();
