import { expect } from '@jest/globals';
import { openIn, page, service } from './stage.js';

/**
 * Opens an address while a request fails, and waits until the page says what was not read and offers to ask again. One
 * page serves all of a person: what it knows goes with each address that is opened.
 */
export const seeNotRead = async (
  address: string,
  path: string,
  what: string,
  as = 'ADMIN',
  choose?: () => Promise<void>,
): Promise<void> => {
  await openIn(`failing, ${as}`, '/health/live', {}, as);
  await page.route(path, (route) => route.fulfill({ status: 503, body: 'no' }));
  try {
    await page.goto(`${service.url}${address}`);
    await choose?.();
    const alert = page.getByRole('alert').filter({ hasText: `Not read: ${what}.` });
    await alert.getByText('The service failed (503).').waitFor();
    expect(await alert.getByRole('button', { name: 'Try again' }).count()).toBe(1);
  } finally {
    await page.unroute(path);
  }
};
