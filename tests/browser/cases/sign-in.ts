import { afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import { axeFindings } from '../../support/web/axe.js';
import { Shop } from '../../support/shop.js';
import { open, page, service, watched } from '../stage.js';

const PIN = '271905';

/** Gives a person a one-time code, as an administrator does. */
const codeFor = async (badge: string): Promise<string> => {
  const { status, body } = await new Shop(service).post(`/api/people/${badge}/first-codes`, {});
  expect(status).toBe(200);
  return String(body['code']);
};

describe('who comes to the app without having signed in', () => {
  beforeAll(async () => {
    const shop = new Shop(service);
    await shop.act('/api/people', { badge: 'WAR-9', name: 'Person WAR-9', roles: ['warranty'] });
    await shop.act('/api/people', { badge: 'DLR-9', name: 'Person DLR-9', roles: ['dealer'], dealer: 'NLM' });
  });
  /** The browser itself writes of each refusal to its console; nothing else is to be complained of. */
  afterEach(async () => {
    await watched.close();
    expect(watched.complaints.filter((each) => !/status of 40[0139]/.test(each))).toEqual([]);
  });

  it('chooses a PIN with the one-time code, and is led to the page that was asked for', async () => {
    await open('/hulls/86-1', {}, null);
    await page.getByRole('heading', { name: 'Sign in' }).waitFor();
    await page.getByText('First time, or PIN lost').click();
    const first = page.getByRole('region', { name: 'Choose your own' });
    await first.getByLabel('Badge').fill('WAR-9');
    await first.getByLabel('One-time code').fill((await codeFor('WAR-9')).toLowerCase());
    await first.getByLabel('New PIN or passphrase').fill('123456');
    await first.getByRole('button', { name: 'Choose it and sign in' }).click();
    await first.getByText('guessed at once').first().waitFor();
    await first.getByLabel('New PIN or passphrase').fill(PIN);
    await first.getByRole('button', { name: 'Choose it and sign in' }).click();
    await page.getByRole('heading', { name: 'Hull 86-1', level: 1 }).waitFor();
    expect(await page.getByText('WAR-9').isVisible()).toBe(true);
  });

  it('signs in by badge and PIN with the keyboard alone, is told what is wrong, and signs out again', async () => {
    await open('/sign-in', {}, null);
    await page.getByLabel('Badge').first().focus();
    await page.keyboard.type('war-9');
    await page.keyboard.press('Tab');
    await page.keyboard.type('999999');
    await page.keyboard.press('Enter');
    await page.getByRole('alert').getByText('do not belong together').waitFor();
    await page.getByLabel('PIN or passphrase', { exact: true }).fill(PIN);
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Sign out' }).waitFor();
    await page.getByRole('button', { name: 'Sign out' }).click();
    await page.getByRole('heading', { name: 'Sign in' }).waitFor();
    await page.goto(`${service.url}/lots`);
    await page.getByRole('heading', { name: 'Sign in' }).waitFor();
  });

  it.each(['//other.example/', 'https://other.example/', '/\\other.example'])(
    'is never led to another site: %s',
    async (from) => {
      await open(`/sign-in?from=${encodeURIComponent(from)}`, {}, null);
      await page.getByLabel('Badge').first().fill('WAR-9');
      await page.getByLabel('PIN or passphrase', { exact: true }).fill(PIN);
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: 'Sign out' }).waitFor();
      expect(page.url()).toBe(`${service.url}/`);
    },
  );

  it('as a dealer sees own hulls alone', async () => {
    await open('/own-hulls', {}, 'DLR-9');
    await page.getByRole('heading', { name: 'Own hulls' }).waitFor();
    expect(await page.getByRole('link', { name: 'Lots' }).count()).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
    await page.goto(`${service.url}/lots`);
    await page.getByText('This is not for your roles').first().waitFor();
  });

  it('makes the browser a device by the code from the desk, and is told where it must not be used', async () => {
    const shop = new Shop(service);
    await shop.act('/api/devices', { code: 'TAB-9', description: 'Tablet', ratedForClassifiedArea: false });
    const { body } = await shop.post('/api/devices/TAB-9/enrolment-codes', {});
    await open('/enrol', {}, null);
    await page.getByLabel('One-time code').fill(String(body['code']));
    await page.getByRole('button', { name: 'Enrol this browser' }).click();
    await page.getByText('This browser is device TAB-9 now.').waitFor();
    await page.getByText('NFPA 33').waitFor();
    await page.getByRole('link', { name: 'Sign in' }).last().click();
    await page.getByText('This is device TAB-9.').waitFor();
  });
});
