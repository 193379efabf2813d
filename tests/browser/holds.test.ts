import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HoldPage } from '@hull-record/contracts';
import { kg, type Shop } from '../support/shop.js';
import { axeFindings } from '../support/web/axe.js';
import { Hand } from '../support/web/hand.js';
import { seeNotRead } from './not-read.js';
import { clearStage, open, page, rowsOf, setStageOf, watched } from './stage.js';

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, locale: 'es-MX' };
const HULLS = 'Hulls and parts that the hold reaches or reached';

let shop: Shop;
let hold: string;

/** A lot in three hulls, of which two were sold, and one of them has a first purchaser. */
beforeAll(
  () =>
    setStageOf(async (stage) => {
      shop = await stage.open();
      await shop.act('/api/people', { badge: 'WAR-1', name: 'Person WAR-1', roles: ['warranty'] });
      for (const lot of ['R-1', 'R-2']) await shop.receive(lot, 'RES-VE');
      for (const hull of ['86-1', '86-2', '86-3']) {
        await shop.startHull(hull);
        await shop.layer(hull, 'L2', [{ lot: 'R-1', amount: kg(20) }]);
      }
      for (const hull of ['86-2', '86-3']) {
        await shop.act(`/api/hulls/${hull}/life`, { what: 'left the place of manufacture' });
        await shop.act(`/api/hulls/${hull}/life`, { what: 'at dealer', dealer: 'NLM' });
        await shop.act(`/api/hulls/${hull}/life`, { what: 'sold to first purchaser' });
      }
      await shop.act('/api/hulls/86-2/owners', {
        ...{ what: 'first purchaser', owner: { name: 'Ines Calder', address: '4 Quay Street, Calder Bay' } },
      });
    }),
  120_000,
);
afterAll(clearStage);

const button = (name: string) => page.getByRole('button', { name, exact: true });
const fold = (name: string) => page.getByText(name, { exact: true });
/** Leaves the page; a refusal that was meant is written by the browser as a failed request, and nothing else may be. */
const leave = async (): Promise<void> => {
  await watched.close();
  expect(watched.complaints.filter((each) => !/status of 4\d\d/.test(each))).toEqual([]);
};

describe('the desk of holds', () => {
  it('says what comes there while nothing is on hold', async () => {
    await open('/holds', {}, 'QUA-1');
    await page.getByText('Nothing is on hold. A lot is held from its page in the store').waitFor();
    await leave();
    hold = await shop.act('/api/lots/R-1/holds', { kind: 'safety', reason: 'gel time of the retained sample' });
  });

  it('takes the first click after a refusal, as a mouse makes it: nothing moves away under it', async () => {
    await open('/store/lots/R-2', {}, 'QUA-1');
    await fold('Place a hold').click();
    // A refusal whose words are so long that what stands beside the field moves on.
    const detail =
      'is not what the plant has agreed to write here, which is why the lot is suspected, since when, and who saw it first';
    await page.route(
      '**/api/lots/R-2/holds',
      (route) =>
        route.fulfill({
          status: 400,
          contentType: 'application/problem+json',
          body: JSON.stringify({
            type: '/problems/invalid-request',
            title: 'x',
            status: 400,
            detail,
            errors: [{ pointer: '/reason', detail }],
          }),
        }),
      { times: 1 },
    );
    const press = button('Hold it');
    await page.getByRole('textbox', { name: 'Reason' }).last().pressSequentially('gel');
    await press.click();
    await page.getByRole('alert').getByText('Not recorded.').first().waitFor();
    await page.getByRole('textbox', { name: 'Reason' }).last().pressSequentially(' time');
    await press.scrollIntoViewIfNeeded();
    const box = await press.boundingBox();
    await page.mouse.move((box?.x ?? 0) + 8, (box?.y ?? 0) + 8);
    await page.mouse.down();
    await page.mouse.up();
    await page.getByRole('status').first().waitFor();
    expect((await shop.read<HoldPage>('/api/holds')).items.map(({ reason }) => reason)).toContain('gel time');
    await leave();
  });

  it('leads from the list to the hulls of a hold, each with where it is and its share', async () => {
    await open('/holds', {}, 'QUA-1');
    await page.getByRole('link', { name: 'Lot R-1', exact: true }).click();
    await page.getByText('It reaches 3 hulls: 0 disposed of, 3 open.').waitFor();
    await rowsOf(HULLS).nth(2).waitFor();
    const rows = await rowsOf(HULLS).allInnerTexts();
    expect(rows.map((row) => row.split(/\s+/)[0]).sort()).toEqual(['86-1', '86-2', '86-3']);
    for (const row of rows) expect(row).toMatch(/100\s?%/);
    expect(await button('Close it').count()).toBe(0);
    await page.getByText('It is closed when every hull is disposed of: 3 hulls are open.').waitFor();
    await leave();
  });

  it('says of several hulls what was found in three taps and one field; what lacks a note is refused, and mended', async () => {
    const hand = new Hand();
    await open(`/holds/${hold}`, {}, 'QUA-1');
    await page.getByText('It reaches 3 hulls').waitFor();
    await hand.tap(fold('Say what was found or done'));
    await hand.tap(page.getByText('86-1', { exact: true }).last());
    await hand.choose(page.getByLabel('Disposition', { exact: true }), 'cleared');
    await hand.tap(button('Record it'));
    expect([hand.taps, hand.fields]).toEqual([3, 1]);
    const refused = page.getByRole('alert').filter({ hasText: /note/i });
    await refused.first().waitFor();
    await page.getByLabel('Note', { exact: true }).fill('retained sample of its layer is sound');
    await button('Record it').click();
    await page.getByText('It reaches 3 hulls: 1 disposed of, 2 open.').waitFor();
    await leave();
  });

  it('closes only when every hull is disposed of, and is over then', async () => {
    const other = await shop.act('/api/lots/R-1/holds', { kind: 'quality', reason: 'label misread' });
    await open(`/holds/${other}`, {}, 'QUA-1');
    await page.getByText('It reaches 3 hulls').waitFor();
    await fold('Say what was found or done').click();
    for (const hull of ['86-1', '86-2', '86-3']) await page.getByText(hull, { exact: true }).last().click();
    await page.getByLabel('Disposition', { exact: true }).selectOption('checked');
    await button('Record it').click();
    await page.getByText('It reaches 3 hulls: 3 disposed of, 0 open.').waitFor();
    const end = page.getByRole('region', { name: 'End' });
    await end.getByLabel('Reason').first().fill('all three looked at');
    await button('Close it').click();
    await page.getByText('What is left of it may be used again').waitFor();
    await page.getByRole('group', { name: 'Confirm' }).getByRole('button').last().click();
    await page.getByText('Over: closed.').waitFor();
    await leave();
  });
});

describe('the duty to notify', () => {
  it('has no default, is decided by a person, and lets dates run from the day of discovery alone', async () => {
    await open(`/holds/${hold}`, {}, 'QUA-1');
    await page.getByText('Not decided. No date runs.').waitFor();
    await page.getByText("decided by the builder's responsible person with counsel").waitFor();
    expect(await fold('Write a notice').count()).toBe(0);
    await fold('Record a decision').click();
    expect(await page.getByLabel('Decision', { exact: true }).inputValue()).toBe('');
    await page.getByLabel('Decision', { exact: true }).selectOption('substantial risk of injury');
    await page.getByLabel('Discovered on').fill('2026-01-06');
    await page.getByLabel('Decided by').fill('QUA-1');
    await page.getByLabel('Why', { exact: true }).fill('the grid may come loose');
    await button('Record the decision').click();
    await rowsOf('Dates that run from the decision')
      .filter({ hasText: /late by|due in/ })
      .first()
      .waitFor();
    // 30 days from discovery: 46 USC 4310(c)(1), as computed by the rules of libs/trade.
    const dates = (await rowsOf('Dates that run from the decision').allInnerTexts()).join('\n');
    expect(dates).toMatch(/Feb 5, 2026|5 Feb 2026/);
    await fold('Write a notice').waitFor();
    await leave();
  });

  it('is written once, told to whom it goes, and a letter that comes back is seen', async () => {
    await open(`/holds/${hold}`, {}, 'WAR-1');
    await fold('Write a notice').click();
    const texts = {
      'Code of the notice': 'DN-1',
      'The defect': 'The bond of the grid may not have cured.',
      'The hazard': 'The grid may come loose under way.',
      'Measures to correct it': 'A dealer tests the bond and renews it.',
      "Undertaking to correct it at the maker's cost": 'The test and the repair are free of charge.',
      Manufacturer: 'Invented Boats',
      'Address of the manufacturer': '1 Slip Road, Calder Bay',
      Make: 'TS',
    };
    for (const [label, words] of Object.entries(texts)) await page.getByLabel(label, { exact: true }).fill(words);
    await button('Keep the notice').click();
    await page.getByRole('heading', { level: 1, name: /DN-1/ }).waitFor();
    await page.getByRole('rowheader', { name: 'Ines Calder' }).waitFor();
    await fold('Record letters that were mailed').click();
    await page.getByText('Ines Calder, 86-2', { exact: true }).first().click();
    await page.getByLabel('Class of mail').selectOption('certified mail');
    await page.getByLabel('Proof', { exact: true }).last().fill('RR 12');
    await button('Record the letters').click();
    await page.getByText('1 letter recorded.').waitFor();
    await fold('Record a letter that came back').click();
    await page.getByLabel('Letter', { exact: true }).selectOption({ label: 'Ines Calder, 86-2' });
    await page.getByLabel('Why it came back').fill('moved away');
    await button('It came back').click();
    await page.getByText('came back:').waitFor();
    await leave();
  });

  it('shows names and addresses to who may see them alone', async () => {
    await open('/notices/DN-1', {}, 'QUA-1');
    await page.getByText('Names and addresses are for warranty and administrators.').waitFor();
    expect(await page.getByText('Ines Calder').count()).toBe(0);
    await leave();
  });
});

describe('each page of holds and notices', () => {
  it('is without a finding of the accessibility checker, at a desk and on a phone in Spanish', async () => {
    for (const [address, words, palabras] of [
      ['/holds', 'Holds, the newest first', 'Retenciones'],
      [`/holds/${hold}`, 'Dates that run from the decision', 'Fechas'],
      ['/notices/DN-1', 'Recipients by name', 'Destinatarios'],
    ] as const) {
      await open(address, { viewport: { width: 1280, height: 800 } });
      await page.getByText(words).first().waitFor();
      await page.waitForLoadState('networkidle');
      expect([address, await axeFindings(page)]).toEqual([address, []]);
      await leave();
      await open(address, { ...PHONE, colorScheme: 'dark' });
      await page.getByText(palabras).first().waitFor();
      await page.waitForLoadState('networkidle');
      expect([address, await axeFindings(page)]).toEqual([address, []]);
      const wide = await page.evaluate<number>('document.documentElement.scrollWidth - innerWidth');
      expect([address, wide]).toEqual([address, 0]);
      await leave();
    }
  });

  it.each([
    ['/holds', '**/api/holds?**', 'holds'],
    ['a hold', '**/api/holds/*', 'the hold'],
    ['a hold', '**/api/holds/*/hulls?**', 'hulls and parts'],
    ['a hold', '**/api/holds/*/duty', 'the duty to notify'],
    ['/notices/DN-1', '**/api/notices/DN-1', 'notice DN-1'],
    ['/notices/DN-1', '**/api/notices/DN-1/recipients', 'the recipients'],
  ])('says of %s when %s fails: %s', async (address, path, what) => {
    await seeNotRead(address === 'a hold' ? `/holds/${hold}` : address, path, what);
  });
});
