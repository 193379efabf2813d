import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Hand } from '../support/web/hand.js';
import { clearStage, open, page, rowsOf, setStageOf, watched } from './stage.js';

beforeAll(() => setStageOf(() => Promise.resolve()), 120_000);
afterAll(clearStage);

const button = (name: string) => page.getByRole('button', { name, exact: true });
const leave = async (): Promise<void> => {
  await watched.close();
  expect(watched.complaints.filter((each) => !/status of 4\d\d/.test(each))).toEqual([]);
};

describe('an administrator of a plant that was just opened', () => {
  it('registers a person with two roles, and gives the first code', async () => {
    const hand = new Hand();
    await open('/people');
    await hand.type(page.getByLabel('Badge', { exact: true }), 'LAM-1');
    await hand.type(page.getByLabel('Name', { exact: true }), 'A laminator');
    await hand.tap(page.getByLabel('laminator'));
    await hand.tap(page.getByLabel('shift lead'));
    await hand.tap(button('Register'));
    await page.getByText('LAM-1 is registered.').waitFor();
    await hand.tap(page.getByRole('link', { name: 'Give the first code' }));
    await hand.tap(button('Make a one-time code'));
    await hand.tap(button('Yes, do it'));
    await page.getByText('Shown this once.').waitFor();
    expect(await page.locator('.secret').innerText()).toMatch(/^[A-Z0-9-]{8,}$/);
    expect([hand.taps, hand.fields]).toEqual([6, 2]);
    await leave();
  });

  it('is told what is wrong with a badge that is taken, and mends it', async () => {
    await open('/people');
    await page.getByLabel('Badge', { exact: true }).fill('lam-1');
    await page.getByLabel('Name', { exact: true }).fill('Another');
    await page.getByLabel('inspector').check();
    await button('Register').click();
    await page.getByRole('alert').getByText('Badge: This badge is registered already').waitFor();
    await page.getByLabel('Badge', { exact: true }).fill('INS-1');
    await button('Register').click();
    await page.getByText('INS-1 is registered.').waitFor();
    await rowsOf('Badges with their roles; a name is kept apart from the record')
      .filter({ hasText: 'INS-1' })
      .waitFor();
    await leave();
  });

  it('ends a role only after a confirmation', async () => {
    await open('/people/LAM-1');
    await page.getByText('End a role', { exact: true }).click();
    const roles = page.getByRole('region', { name: 'Roles' });
    await roles.getByLabel('Role').last().selectOption('shift lead');
    await roles.getByLabel('Reason').fill('works days now');
    await button('End it').click();
    await page.getByText('LAM-1 may do nothing more as shift lead.').waitFor();
    await button('Yes, record it').click();
    await page.getByText('Ended: shift lead.').waitFor();
    await leave();
  });

  it('registers a device, reads where it must not be used, and gets a code to enrol it', async () => {
    await open('/devices');
    await page.getByText('NFPA 33').waitFor();
    await page.getByLabel('Device', { exact: true }).fill('TAB-7');
    await page.getByLabel('What it is and where it stands').fill('Tablet at the store');
    await button('Register').click();
    await page.getByText('Device TAB-7 is registered.').waitFor();
    await page.getByText('Enrol or revoke TAB-7').click();
    await button('Make an enrolment code').first().click();
    await page.locator('.secret').waitFor();
    await leave();
  });

  it('makes a token that is shown once, and revokes it', async () => {
    await open('/tokens');
    await page.getByLabel('Name of the program').fill('scale');
    await page.getByLabel('In the name of badge').fill('LAM-1');
    await page.getByLabel('Device', { exact: true }).fill('TAB-7');
    await button('Make the token').click();
    const token = await page.locator('.secret').innerText();
    await page.reload();
    await rowsOf('Tokens, without what they are').first().waitFor();
    expect(await page.getByText(token).count()).toBe(0);
    await button('Revoke').click();
    await button('Yes, do it').click();
    await rowsOf('Tokens, without what they are').getByText('revoked').first().waitFor();
    await leave();
  });

  it('is alone in seeing this page in the navigation', async () => {
    await open('/people', {}, 'INS-1');
    await page.getByText('Register a person: for the roles administrator.').waitFor();
    expect(await page.getByRole('navigation', { name: 'Pages' }).getByRole('link', { name: 'People' }).count()).toBe(0);
    await leave();
  });
});
