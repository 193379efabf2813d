import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { CaseAnswer, LookView } from '@hull-record/contracts';
import { kg, PORT_SIDE, type Shop } from '../support/shop.js';
import { axeFindings } from '../support/web/axe.js';
import { Hand } from '../support/web/hand.js';
import { FILED, TERMS } from '../support/write-samples-claims.js';
import { NOT_READ_ONCE_ASKED, seeGroupSizes } from './cases/freezing.js';
import { seeNotRead } from './not-read.js';
import { clearStage, open, page, rowsOf, setStageOf, watched } from './stage.js';

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, locale: 'es-MX' };

let shop: Shop;
let claim: string;

/** Twelve hulls of which the first six hold BAD; four of those have a claim, and the first waits for the desk to file one. */
beforeAll(
  () =>
    setStageOf(async (stage) => {
      shop = await stage.open();
      await shop.act('/api/people', { badge: 'WAR-1', name: 'Person WAR-1', roles: ['warranty'] });
      await shop.act('/api/models/TS86/warranty-terms', { ...TERMS, happenedAt: '2025-08-01T12:00:00Z' });
      for (const lot of ['BAD', 'GOOD']) await shop.receive(lot, 'RES-VE');
      for (let i = 0; i < 12; i += 1) {
        await shop.startHull(`H${i}`);
        await shop.layer(`H${i}`, 'L2', [{ lot: i < 6 ? 'BAD' : 'GOOD', amount: kg(20) }]);
        const happenedAt = `2026-02-${String(i + 1).padStart(2, '0')}T15:00:00Z`;
        await shop.act(`/api/hulls/H${i}/life`, { what: 'left the place of manufacture', happenedAt });
      }
      for (const i of [1, 2, 3, 4])
        claim = await shop.act(`/api/hulls/H${i}/claims`, {
          ...{ ...FILED, noticedOn: undefined, reportedOn: `2026-07-0${i}`, happenedAt: `2026-07-0${i}T12:00:00Z` },
          spots: [{ place: { ...PORT_SIDE, fromTransomMm: 3_900 + 20 * i } }],
        });
    }),
  240_000,
);
afterAll(clearStage);

const button = (name: string) => page.getByRole('button', { name, exact: true });
const field = (label: string) => page.getByLabel(label, { exact: true }).and(page.locator('input, select, textarea'));
const section = (name: string) => page.getByRole('region', { name, exact: true });
/** Leaves the page; a refusal that was meant is written by the browser as a failed request, and nothing else may be. */
const leave = async (): Promise<void> => {
  await watched.close();
  expect(watched.complaints.filter((each) => !/status of 4\d\d/.test(each))).toEqual([]);
};
const confirm = async (): Promise<void> =>
  page.getByRole('group', { name: 'Confirm' }).getByRole('button').last().click();

describe('the warranty desk', () => {
  it('files a claim from its hull in two taps and five fields, and decides on it in one tap and two fields', async () => {
    const hand = new Hand();
    await open('/hulls/H0', {}, 'WAR-1');
    await hand.tap(page.getByRole('link', { name: 'File a claim' }));
    await hand.choose(field('Kind of defect'), 'blister');
    await hand.type(field('Reported on'), '2026-07-10');
    await hand.type(field('Symptoms'), 'Blisters on the bottom, seen at haul-out.');
    await hand.type(field('From the transom, mm'), '4100');
    await hand.type(field('From the keel along the skin, mm'), '500');
    await hand.tap(button('File the claim'));
    await page.getByRole('heading', { level: 1, name: 'C1 of H0' }).waitFor();
    expect([hand.taps, hand.fields]).toEqual([2, 5]);
    await rowsOf('Spots of the claim on hull molding H0-H').filter({ hasText: 'D1' }).waitFor();
    await page.getByText('Still asked for: HIN plate, whole side, zone with scale, close-up with ruler.').waitFor();
    const deciding = new Hand();
    await deciding.choose(field('Decision'), 'accepted');
    await deciding.type(section('Decision').getByLabel('Reason', { exact: true }), 'first year of the terms');
    await deciding.tap(button('Record the decision'));
    await rowsOf('Decisions, the newest first; it holds').filter({ hasText: 'first year of the terms' }).waitFor();
    expect([deciding.taps, deciding.fields]).toEqual([1, 2]);
    await page.getByText('Decided: accepted.').first().waitFor();
    await leave();
  });

  it('is told at its field what a decision lacks, and mends it', async () => {
    await open(`/claims/${claim}`, {}, 'WAR-1');
    await field('Decision').selectOption('part paid');
    await section('Decision').getByLabel('Reason', { exact: true }).fill('third year');
    await button('Record the decision').click();
    await page.getByRole('alert').getByText('is needed when part is paid').waitFor();
    await field('Paid, % of the cost').fill('75');
    await field('Cost').fill('4120,50');
    await field('Currency').fill('usd');
    await button('Record the decision').click();
    await rowsOf('Decisions, the newest first; it holds').filter({ hasText: '4120.5 USD' }).waitFor();
    await leave();
  });

  it('sees moisture as a meter showed it, never as a share of water, and whether it is in term as data', async () => {
    await open(`/claims/${claim}`, {}, 'WAR-1');
    const readings = rowsOf('Moisture readings, on the scale: relative');
    await readings.filter({ hasText: '22.5' }).waitFor();
    expect((await readings.allInnerTexts()).join(' ')).not.toContain('%');
    await page.getByText('They are no percentage of water').waitFor();
    await section('What the warranty terms say').getByText('the record cannot say').waitFor();
    await page.getByText('Whether a claim is paid is decided by a person').waitFor();
    await leave();
  });

  it('marks a claim as prompted, finds it so in the list, and takes it back', async () => {
    for (const [how, words] of [
      ['after a notice', 'Marked as prompted.'],
      ['owner or dealer', 'Marked as not prompted.'],
    ] as const) {
      await open(`/claims/${claim}`, {}, 'WAR-1');
      await page.getByText('Say it otherwise: prompted, or not').click();
      await field('How it came to light').selectOption(how);
      await section('How it came to light').getByLabel('Reason', { exact: true }).fill('by the day of the letter');
      await button('Record how it came to light').click();
      await page.getByText(words).waitFor();
      await page.goto(new URL('/claims?prompted=prompted', page.url()).href);
      if (how === 'after a notice') await rowsOf('Claims, those reported last first').getByText('C1 of H4').waitFor();
      else await page.getByText('There is no such claim.').waitFor();
      await leave();
    }
  });

  it('publishes the next version of the terms of a model after being asked once more', async () => {
    await open('/warranty?model=TS86', {}, 'WAR-1');
    await page.getByRole('heading', { name: 'TS86, version 1' }).waitFor();
    await field('From model year').fill('2028');
    await field('To model year').fill('2029');
    await page.getByRole('group', { name: 'Cover 1' }).getByLabel('Kinds of defect').fill('blister; Crazing');
    await page.getByRole('group', { name: 'Cover 1' }).getByLabel('Years').fill('5');
    await page.getByRole('group', { name: 'Cover 1' }).getByLabel('The builder bears').fill('100 62,5');
    await page.getByLabel('Reason', { exact: true }).last().fill('terms of the next season');
    await button('Publish the terms').click();
    await confirm();
    await page.getByRole('heading', { name: 'TS86, version 2' }).waitFor();
    const [cover = ''] = await rowsOf(
      'What is covered, for how long, and what of it the builder bears',
    ).allInnerTexts();
    expect(cover).toMatch(/Blister, Crazing\s+5 years\s+year 1: 100 %, year 2: 62.5 %/);
    await leave();
  });
});

describe('quality', () => {
  it('opens a case, freezes how it is judged, looks, and sees what was found and what the data cannot say', async () => {
    await open('/cases', {}, 'QUA-1');
    await page.getByText('No case is open.').waitFor();
    await field('Code of the case').fill('C-1');
    await field('What it is about').fill('Blisters of the spring');
    await button('Open the case').click();
    await page.getByRole('heading', { level: 1, name: /C-1/ }).waitFor();
    expect(await button('Look at it: look 1, by version 1').count()).toBe(0);
    expect(await field('Report lag, days').inputValue()).toBe('30');
    await seeGroupSizes(12);
    await field('Kind of claim').selectOption('blister');
    await field('Looked at until').fill('2026-09-30');
    await field('Report lag, days').fill('0');
    await page.getByLabel('Reason', { exact: true }).fill('five claims within a month');
    await button('Freeze the settings').click();
    await confirm();
    await button('Look at it: look 1, by version 1').click();
    await page
      .getByRole('heading', { name: 'Claims by month built and months in service' })
      .waitFor({ timeout: 30_000 });
    const { answer } = await shop.read<LookView>('/api/cases/C-1/looks/1');
    const { verdict, sentences, cannotSay, classes } = answer as CaseAnswer;
    await page.getByText(`${verdict} (exploratory)`).first().waitFor();
    for (const each of [...sentences, ...cannotSay]) await page.getByText(each, { exact: true }).first().waitFor();
    expect(classes[0]?.named).toBe('BAD');
    await section('What would settle it').getByRole('link', { name: 'BAD', exact: true }).waitFor();
    await section('What would settle it').getByRole('link', { name: 'H5', exact: true }).waitFor();
    expect(await page.getByText(/caus(e|ed|es) /).count()).toBe(0);
    await leave();
  });

  it('has a sentence and a table behind each picture', async () => {
    await open('/cases/C-1', {}, 'QUA-1');
    await page.getByRole('heading', { name: 'Where on the hull' }).waitFor();
    const pictures = page.locator('figure.drawn');
    expect(await pictures.count()).toBeGreaterThanOrEqual(7);
    for (const picture of await pictures.all()) {
      const words = await picture.getByRole('img').getAttribute('aria-label');
      expect(words?.length).toBeGreaterThan(30);
      expect(await picture.locator('figcaption').innerText()).toContain(words);
      await picture.getByText('The same as a table').click();
      expect(await picture.getByRole('table').getByRole('row').count()).toBeGreaterThan(1);
    }
    await leave();
  });

  it('counts every look, and has one worked out again to the digit', async () => {
    await open('/cases/C-1', {}, 'QUA-1');
    await button('Look at it: look 2, by version 1').click();
    await page.getByRole('heading', { name: 'Look 2 of 2' }).waitFor({ timeout: 30_000 });
    await button('Work it out again from what was kept').click({ timeout: 30_000 });
    await page.getByText('give the same answer, to the digit').waitFor({ timeout: 30_000 });
    expect(await rowsOf('Looks, the newest first').count()).toBe(2);
    await leave();
  });

  it('places a hold on the lot that stands out from where it sees it', async () => {
    await open('/cases/C-1', {}, 'QUA-1');
    await page.getByText('Hold lot BAD', { exact: true }).click();
    await page
      .getByRole('group')
      .filter({ hasText: 'Hold lot BAD' })
      .getByLabel('Reason', { exact: true })
      .last()
      .fill('claims');
    await button('Hold it').click();
    await page.getByText('On hold. It reaches 6').waitFor();
    await leave();
  });
});

const PAGES = [
  ['a claim', 'Decide on the claim', 'Decisiones, la más nueva primero'],
  ['/claims/new?hull=H0', 'Spots on the hull', 'Puntos en el casco'],
  ['/cases/C-1', 'What the data cannot say', 'Qué no pueden decir los datos'],
] as const;

describe('each page of claims and cases', () => {
  it.each(PAGES)(
    '%s is without a finding of the accessibility checker, at a desk and on a phone',
    async (at, words, palabras) => {
      const address = at === 'a claim' ? `/claims/${claim}` : at;
      await open(address, { viewport: { width: 1280, height: 800 } }, 'WAR-1');
      await page.getByText(words).first().waitFor();
      await page.waitForLoadState('networkidle');
      expect(await axeFindings(page)).toEqual([]);
      await leave();
      await open(address, { ...PHONE, colorScheme: 'dark' }, 'WAR-1');
      await page.getByText(palabras).first().waitFor();
      await page.waitForLoadState('networkidle');
      expect(await axeFindings(page)).toEqual([]);
      expect(await page.evaluate<number>('document.documentElement.scrollWidth - innerWidth')).toBe(0);
      await leave();
    },
  );

  it.each([
    ['a claim', '**/api/claims/*', 'the claim'],
    ['a claim', '**/api/parts/*', 'the spots'],
    ['a claim', '**/api/models', 'the spots'],
    ['/cases/C-1', '**/api/cases/C-1', 'case C-1'],
    ['/cases/C-1', '**/api/cases/C-1/looks/*', 'look 2'],
  ])('says of %s when %s fails: %s', async (address, path, what) => {
    await seeNotRead(address === 'a claim' ? `/claims/${claim}` : address, path, what, 'WAR-1');
  });

  it.each(NOT_READ_ONCE_ASKED)('says of a case when %s fails: %s', (path, what, press) =>
    seeNotRead('/cases/C-1', path, what, 'WAR-1', press),
  );
});
