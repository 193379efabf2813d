import { describe, expect, it } from '@jest/globals';
import { close, open, page, rowsOf } from '../stage.js';

describe('the page of a lot', () => {
  const holders = async (): Promise<(readonly string[])[]> => {
    const rows = rowsOf('Hulls and parts that hold lot R-BAD');
    await rows.first().waitFor();
    return Promise.all(
      (await rows.all()).map(async (row) => (await row.locator('th, td').allInnerTexts()).slice(0, 4)),
    );
  };

  it('lists exactly the hulls that hold it: straight, through the heel of a tank, and through a repair', async () => {
    await open('/lots/R-BAD');
    expect(await holders()).toEqual([
      ['86-1', '80 kg', 'weighed', '100 %'],
      ['86-2', '80 kg', 'weighed', '100 %'],
      ['86-3', '14 kg', 'weighed', '17.5 %'],
      ['86-4', '0.4 kg', 'weighed', '100 %'],
    ]);
    expect(await page.getByText('at dealer Northlight Marine').count()).toBe(1);
    expect(await page.getByText('Assumes a well-mixed tank').count()).toBe(1);
    await close();
  });

  it('leaves out hulls below the least share, and keeps the choice in the address', async () => {
    await open('/lots/R-BAD');
    await holders();
    await page.getByLabel('Least share of a layer, %').fill('20');
    await page.getByRole('button', { name: 'Show' }).click();
    await page.getByRole('table', { name: /R-BAD/ }).getByRole('link', { name: '86-3' }).waitFor({ state: 'detached' });
    expect((await holders()).map(([hull]) => hull)).toEqual(['86-1', '86-2', '86-4']);
    await page.reload();
    expect((await holders()).map(([hull]) => hull)).toEqual(['86-1', '86-2', '86-4']);
    await close();
  });

  it('shows what a tank fill was made of and the received lots in it', async () => {
    await open('/lots/T1-2');
    await rowsOf('Mass fractions of received lots').first().waitFor();
    expect(await rowsOf('Mass fractions of received lots').allInnerTexts()).toEqual([
      expect.stringMatching(/R-GOOD\s+resin\s+82.5 %/),
      expect.stringMatching(/R-BAD\s+resin\s+17.5 %/),
    ]);
    expect(await rowsOf('Lots put into this one').count()).toBe(2);
    await close();
  });

  it('is found in the list by its state', async () => {
    await open('/lots');
    await page.getByLabel('State').selectOption('quarantined');
    await page.getByRole('button', { name: 'Show' }).click();
    const rows = rowsOf('Lots, the newest first');
    await rows.filter({ hasText: 'G-1' }).waitFor({ state: 'detached' });
    await rows.filter({ hasText: 'R-ODD' }).waitFor();
    expect(await rows.getByRole('rowheader').allInnerTexts()).toEqual(['R-ODD']);
    await close();
  });
});
