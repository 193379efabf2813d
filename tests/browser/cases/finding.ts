import { describe, expect, it } from '@jest/globals';
import { close, open, page, rowsOf, watched } from '../stage.js';

describe('the search', () => {
  it('finds hulls and lots by part of a number', async () => {
    await open('/search');
    await page.getByLabel('Hull number, HIN or lot').fill('bad');
    await page.getByRole('button', { name: 'Find' }).click();
    await page.getByRole('link', { name: 'R-BAD' }).waitFor();
    await page.getByText('No hull number or HIN holds “bad”.').waitFor();
    expect(await page.getByText('No hull number or HIN holds “bad”.').count()).toBe(1);
    await close();
  });

  it('tells which lots some hulls share, and how many others hold each', async () => {
    await open('/search');
    await page.getByLabel('Hull numbers or HINs').fill('86-1\n86-3, 86-2');
    await page.getByRole('button', { name: 'Show shared lots' }).click();
    const rows = rowsOf('Lots held by 3 hulls entered');
    await rows.first().waitFor();
    const told = await Promise.all((await rows.all()).map((row) => row.locator('th, td').allInnerTexts()));
    expect(told.map((cells) => [cells[0], ...cells.slice(-2)])).toEqual([
      ['G-1', '3 of 3', '1'],
      ['M-1', '3 of 3', '1'],
      ['R-BAD', '3 of 3', '1'],
      ['R-GOOD', '2 of 3', '2'],
    ]);
    await close();
  });

  it('names each hull that is not on record instead of leaving it out', async () => {
    await open('/search?hulls=86-1,nowhere');
    await page.getByRole('alert').getByText('There is no hull nowhere.').waitFor();
    await watched.close();
    expect(watched.complaints).toHaveLength(1);
  });
});

describe('the lots at a defect', () => {
  it('are followed from its row, and name the other hulls that hold them', async () => {
    await open('/hulls/86-1');
    await page.getByRole('link', { name: 'lots at D1' }).click();
    const bad = rowsOf('Lots in the layer and place of the defect').filter({ hasText: 'R-BAD' });
    await bad.waitFor();
    expect(await bad.innerText()).toMatch(/20 kg[^]*100 %[^]*3 hulls: 86-2, 86-3, 86-4/);
    await close();
  });
});

describe('a list longer than a page', () => {
  it('shows more when asked, and says when that is all', async () => {
    await open('/');
    const rows = rowsOf('The hulls begun last');
    await rows.first().waitFor();
    expect(await rows.count()).toBe(5);
    await page.getByRole('button', { name: 'Show more hulls' }).click();
    await page.getByText('All hulls: 6.').waitFor();
    expect(await rows.getByRole('rowheader').allInnerTexts()).toEqual(['86-6', '86-5', '86-4', '86-3', '86-2', '86-1']);
    await close();
  });
});
