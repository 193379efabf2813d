import { afterEach, describe, expect, it } from '@jest/globals';
import { axeFindings } from '../../support/web/axe.js';
import { open, page, watched } from '../stage.js';

const TABLET = { viewport: { width: 800, height: 1280 }, hasTouch: true };

describe('the start of the station', () => {
  afterEach(() => watched.close());

  it('says who has the tablet, that all is sent, and offers tasks', async () => {
    await open('/station', TABLET, 'LAM-1');
    await page.getByText('All sent').waitFor();
    await page.getByRole('link', { name: 'LAM-1' }).waitFor();
    await page.getByRole('link', { name: 'Enter a layer' }).waitFor();
    expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
    expect(watched.complaints).toEqual([]);
  });

  it.each([
    ['/station', 'Enter a layer'],
    ['/station/take-over', 'Take it over'],
    ['/station/outbox', 'Nothing waits'],
  ])('%s is without a finding of the accessibility checker', async (address, words) => {
    await open(address, TABLET, 'LAM-1');
    await page.getByText(words).first().waitFor();
    expect(await axeFindings(page)).toEqual([]);
  });

  it('takes a tablet over off line by the badge alone, and says that it is not proved', async () => {
    await open('/station', TABLET, null);
    await page.getByRole('link', { name: 'Take over this tablet' }).click();
    await page.getByLabel('PIN').waitFor();
    await page.context().setOffline(true);
    await page.getByText('No network: the badge alone will do.').waitFor();
    await page.getByLabel('Badge').fill('INS-1');
    await page.getByRole('button', { name: 'Take it over by badge' }).click();
    await page.getByRole('link', { name: 'INS-1 not proved' }).waitFor();
    await page.getByText('No network since').waitFor();
  });
});
