import { expect } from '@jest/globals';
import { page } from '../stage.js';

/** In the form that freezes: sizes of groups follow what is chosen, and say when they are too small to compare within. */
export const seeGroupSizes = async (hulls: number): Promise<void> => {
  const field = (label: string) => page.getByLabel(label, { exact: true });
  const chosen = (what: string) => page.getByRole('row', { name: `${what} (chosen)` });
  const small = page.getByText(`Of ${hulls} hulls, ${hulls} are in groups of fewer than 20.`);
  await small.waitFor();
  await field('Compare within: model').uncheck();
  await chosen('build quarter').waitFor();
  await field('Compare within: build quarter').uncheck();
  await chosen('nothing: all hulls together').waitFor();
  expect(await small.count()).toBe(0);
  await field('Compare within: model').check();
  await field('Compare within: build quarter').check();
  await field('Models').fill('TS');
  await page.getByText('Sizes of groups are shown once models and days are right.').waitFor();
  await field('Models').fill('');
  await small.waitFor();
};

type AskedFor = readonly [path: string, what: string, press: () => Promise<void>];

/** What a page of a case asks for only when somebody wants it. */
export const NOT_READ_ONCE_ASKED: readonly AskedFor[] = [
  ['**/api/cases/*/groups?**', 'sizes of groups', () => page.getByText('Freeze settings', { exact: true }).click()],
  [
    '**/api/cases/*/looks/*/again',
    'the answer worked out again',
    () => page.getByRole('button', { name: 'Work it out again from what was kept' }).click(),
  ],
];
