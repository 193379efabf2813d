import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { kg, type Shop } from '../support/shop.js';
import { Hand } from '../support/web/hand.js';
import { clearStage, open, page, rowsOf, service, setStageOf, watched } from './stage.js';

let other: Shop;

/** A shop that is open, with nothing to judge yet. */
beforeAll(
  () =>
    setStageOf(async (shop) => {
      other = await shop.open();
      await shop.receive('G-1', 'GEL-W');
      await shop.startHull('86-1');
    }),
  120_000,
);
afterAll(clearStage);

const button = (name: string) => page.getByRole('button', { name, exact: true });
const WAITING = 'Defects, readings, checks and repairs, the oldest first';
const leave = async (): Promise<void> => {
  await watched.close();
  expect(watched.complaints.filter((each) => !/status of 4\d\d/.test(each))).toEqual([]);
};
const read = async <T>(path: string): Promise<T> =>
  (await (await fetch(`${service.url}${path}`, { headers: await service.signedIn() })).json()) as T;

describe('the quality desk', () => {
  it('says what comes there while nothing waits', async () => {
    await open('/quality', {}, 'QUA-1');
    await page.getByText('Nothing waits. Defects, readings outside').waitFor();
    await page.getByText('No nonconformity is open.').waitFor();
    await leave();
  });

  it('decides about a defect in two taps and two fields; a refusal names the field, and is mended', async () => {
    await other.layer('86-1', 'L1', [{ lot: 'G-1', amount: kg(18) }]);
    await other.defect('86-1-H', { layer: 'L1' });
    const hand = new Hand();
    await open('/quality', {}, 'QUA-1');
    await hand.tap(page.getByRole('link', { name: /^Decide: Dry spot/ }));
    await hand.choose(page.getByLabel('Disposition', { exact: true }), 'use as is');
    await hand.type(page.getByLabel('Reason'), 'under the rub rail, cosmetic');
    await hand.tap(button('Record the decision'));
    expect([hand.taps, hand.fields]).toEqual([2, 2]);
    await page.getByRole('alert').getByText('Concession: use as is needs the number of a concession').waitFor();
    expect(await page.getByLabel('Reason').inputValue()).toBe('under the rub rail, cosmetic');
    expect(await page.evaluate('document.activeElement.name')).toBe('concession');
    await page.keyboard.type('C-12');
    await page.keyboard.press('Enter');
    await page.getByText('Decided: use as is.').waitFor();
    await page.getByText('Nothing waits.').waitFor();
    await leave();
    expect(await read('/api/concessions')).toMatchObject({
      items: [{ concession: 'C-12', hull: '86-1', by: 'QUA-1' }],
    });
  });

  it('accepts a repair that another did, and answers what a defect of cure asks', async () => {
    const found = await other.defect('86-1-H', { kind: 'catalyst-slug', layer: 'L1' });
    await other.repair('86-1-H', [found]);
    await open('/quality', {}, 'QUA-1');
    await page.getByRole('link', { name: /^Accept or refuse/ }).click();
    await page.getByLabel('The repair').selectOption('yes');
    await button('Record the decision').click();
    await page.getByText('The repair is judged.').waitFor();
    await page.getByRole('link', { name: /^Answer/ }).click();
    await page.getByLabel('Note').fill('bucket not written down');
    await button('Record the answer').click();
    await page.getByText('Answered: bucket not written down.').waitFor();
    await leave();
  });

  it('shows what stands in the way of a release, and offers no release meanwhile', async () => {
    await open('/quality/release', {}, 'QUA-1');
    await page.getByRole('link', { name: 'What stands in the way of hull 86-1' }).click();
    await rowsOf('What stands in the way, part by part').first().waitFor();
    expect(await page.getByText(/^\d+ things stand in the way\.$/).count()).toBe(1);
    expect(await button('Release it').count()).toBe(0);
    await leave();
  });

  it('shows no count of fewer than five hulls, and then counts per hull made', async () => {
    await open('/quality/counts', {}, 'QUA-1');
    await page.getByText('1 hull was made then. Fewer than five make no group').waitFor();
    await leave();
    for (const number of ['86-2', '86-3', '86-4', '86-5']) {
      await other.startHull(number);
      await other.layer(number, 'L1', [{ lot: 'G-1', amount: kg(18) }]);
    }
    await open('/quality/counts', {}, 'QUA-1');
    const rows = rowsOf('Defects per hull made, the most first');
    await rows.first().waitFor();
    expect(await rows.allInnerTexts()).toEqual([
      expect.stringMatching(/Catalyst slug\s+0.2\s+1\s+5/),
      expect.stringMatching(/Dry spot\s+0.2\s+1\s+5/),
    ]);
    await leave();
  });

  it('is not offered to who receives', async () => {
    await open('/store', {}, 'REC-1');
    await page.getByRole('link', { name: 'Store' }).waitFor();
    expect(await page.getByRole('link', { name: 'Quality', exact: true }).count()).toBe(0);
    await leave();
  });

  it('reads there that a gauge is unfit, and decides about the check', async () => {
    await open('/equipment/MG-1', {}, 'QUA-1');
    await page.getByLabel('What', { exact: true }).selectOption('reference film');
    await page.getByLabel('It was found').selectOption('no');
    await button('Record the check').click();
    await page.getByText('Found unfit. What was read or sprayed').waitFor();
    await page.getByRole('link', { name: 'Decide' }).click();
    await page.getByRole('region', { name: 'To decide' }).getByText('MG-1: reference film').waitFor();
    await rowsOf(WAITING).filter({ hasText: 'MG-1 was found unfit' }).waitFor();
    await leave();
  });
});
