import { setTimeout as wait } from 'node:timers/promises';
import type { Page } from 'playwright-core';

const EVERY_MS = 50;
const WITHIN_MS = 15_000;

/**
 * Waits until an expression is true in a page.
 *
 * The driver's own way evaluates text in the page when it is not true at once, which the security policy forbids; what is
 * evaluated from outside is not the page's own.
 *
 * @throws when it is not within 15 s
 */
export const comesTrue = async (on: Page, expression: string): Promise<void> => {
  const until = Date.now() + WITHIN_MS;
  while (Date.now() < until) {
    // A page that is being loaded anew has no answer.
    if (await on.evaluate<boolean>(`Boolean(${expression})`).catch(() => false)) return;
    await wait(EVERY_MS);
  }
  throw new Error(`This did not come true in the page: ${expression}`);
};
