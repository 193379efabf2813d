import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import './cases/failing-more.js';
import { readFileSync } from 'node:fs';
import { axeFindings } from '../support/web/axe.js';
import { seeNotRead } from './not-read.js';
import { clearStage, close, open, page, rowsOf, setStage, watched } from './stage.js';

// R-BAD is in 86-1 and 86-2 whole, in 86-3 through the heel of the tank, and in 86-4 through a repair.
beforeAll(setStage, 120_000);
afterAll(clearStage);

const LOT = '/trace/lots/R-BAD';
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
const HULLS = 'All hulls and parts, the most kilograms first';
const drawing = () => page.getByRole('group', { name: /^Picture of the trace/ });
const cells = (caption: string): Promise<string[]> => rowsOf(caption).allInnerTexts();
const oneLine = (text: string): string => text.replace(/\s+/g, ' ');

describe('the trace of a lot', () => {
  it('says in a sentence where it went, draws it, and lists the hulls with kilograms, share, basis and where they are', async () => {
    await open(LOT);
    await page.getByText('Lot R-BAD is in 4 hulls. Hull 86-1 holds most of it: 80 kg.').waitFor();
    const rows = (await cells(HULLS)).map(oneLine);
    expect(rows).toHaveLength(4);
    expect(rows[0]).toMatch(/^86-1 Its ways 80 kg 100 % weighed part started, \d/);
    expect(rows[1]).toMatch(/^86-2 Its ways 80 kg 100 % weighed at dealer Northlight Marine, \d/);
    expect(rows[2]).toMatch(/^86-3 Its ways 14 kg 17.5 % weighed/);
    expect(rows[3]).toMatch(/^86-4 Its ways 0.4 kg 100 % weighed/);
    const texts = await drawing().locator('text').allTextContents();
    expect(texts.slice(0, 3)).toEqual(['1 received lot', '2 tank fills', '4 hulls']);
    for (const code of ['R-BAD', 'T1-1', 'T1-2', '86-1', '86-2', '86-3', '86-4'])
      expect(texts.some((text) => text.startsWith(code))).toBe(true);
    expect(await drawing().getByRole('img').getAttribute('aria-label')).toContain('Lot R-BAD is in 4 hulls');
    await close();
  });

  it('fades all but the ways of what is picked: by pointer, by key, from the table; the address keeps it', async () => {
    await open(LOT);
    await drawing().getByText('T1-2').click();
    await page.getByRole('status').getByText('T1-2: 140 kg, from 1 and into 1.').waitFor();
    const faded = async () =>
      (await drawing().locator('.label.fades').allTextContents()).map((text) => text.slice(0, 4)).sort();
    expect(await faded()).toEqual(['86-1', '86-2', '86-4']);
    expect(await rowsOf('Of T1-2: hulls and parts, the most kilograms first').count()).toBe(1);
    expect(new URL(page.url()).searchParams.get('pick')).toBe('T1-2');
    await page.reload();
    await page.getByRole('status').getByText('T1-2: 140 kg').waitFor();
    await drawing().focus();
    await page.keyboard.press('ArrowUp');
    await page.getByRole('status').getByText('T1-1: 300 kg').waitFor();
    await page.keyboard.press('ArrowRight');
    await page
      .getByRole('status')
      .getByText(/^86-\d: /)
      .waitFor();
    await page.keyboard.press('Escape');
    await page.getByText('Press a lot or a hull to see its ways alone').waitFor();
    await page.getByRole('button', { name: 'Its ways alone: 86-4' }).click();
    await page.getByRole('status').getByText('86-4: 0.4 kg, from 1 and into 0.').waitFor();
    expect(await faded()).toEqual(['86-1', '86-2', '86-3', 'T1-1', 'T1-2']);
    await page.getByRole('button', { name: 'Show all ways' }).click();
    expect(await faded()).toEqual([]);
    await close();
  });

  it('has a table of all its ways', async () => {
    await open(LOT);
    await page.getByText('Table of all 6 ways').click();
    const ways = (await cells('Every way with its kilograms, the widest first')).map(oneLine);
    expect(ways).toEqual([
      'R-BAD T1-1 300 kg',
      'T1-1 T1-2 140 kg',
      expect.stringMatching(/^T1-1 86-[12] 80 kg$/),
      expect.stringMatching(/^T1-1 86-[12] 80 kg$/),
      'T1-2 86-3 14 kg',
      'R-BAD 86-4 0.4 kg',
    ]);
    await close();
  });

  it('is kept as a file in which no text runs as a formula', async () => {
    await open('/trace/lots/R-ODD');
    await page.getByText('Lot R-ODD is in no hull.').waitFor();
    await page.route('**/api/lots/*/trace', async (route) => {
      const answer = (await (await route.fetch()).json()) as { nodes: { supplier: string }[] };
      await route.fulfill({
        json: { ...answer, nodes: answer.nodes.map((node) => ({ ...node, supplier: '=1+1, "x"' })) },
      });
    });
    await page.goto(new URL(LOT, page.url()).href);
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as CSV' }).click(),
    ]);
    expect(file.suggestedFilename()).toBe('trace-R-BAD.csv');
    const lines = readFileSync(await file.path(), 'utf8').split('\r\n');
    expect(lines[0]).toBe(
      '\uFEFFkind,code,origin,material,role,supplier,supplierLot,state,hin,kg,share,basis,possibly,now,dealer,since',
    );
    expect(lines[1]).toBe(`lot,R-BAD,received,Vinyl ester resin,resin,"'=1+1, ""x""",S-R-BAD,released,,1000,1,,,,,`);
    expect(lines).toContain('T1-1,T1-2,140');
    await close();
  });
});

describe('the trace of hulls', () => {
  it('goes back to the received lots, of several hulls at once', async () => {
    await open('/trace/hulls/86-3');
    await page.getByText(/^In 86-3 there are 147 kg of material, of 4 received lots\./).waitFor();
    const rows = (await cells('All lots, the most kilograms first')).map(oneLine);
    expect(rows.map((row) => row.split(' ')[0])).toEqual(['R-GOOD', 'M-1', 'G-1', 'R-BAD']);
    expect(rows[3]).toMatch(/^R-BAD Its ways Vinyl ester resin 14 kg 17.5 % weighed released$/);
    await page.getByLabel('And these hulls').fill('86-1');
    await page.getByRole('button', { name: 'Show', exact: true }).click();
    await page.getByText(/^In 86-1, 86-3 there are/).waitFor();
    expect(new URL(page.url()).searchParams.get('also')).toBe('86-1');
    await page.getByLabel('And these hulls').fill('nowhere');
    await page.getByRole('button', { name: 'Show', exact: true }).click();
    await page.getByRole('alert').getByText('There is no hull nowhere.').waitFor();
    await watched.close();
  });

  it('of a hull with nothing in it says what to do', async () => {
    await open('/trace/hulls/86-6');
    await page.getByText('No lot is recorded in these hulls yet.').waitFor();
    await close();
  });
});

describe('the start of traces', () => {
  it('leads to a lot or to hulls, and lots and hulls lead there', async () => {
    await open('/trace');
    await page.getByLabel('Code of the lot').fill('R-BAD');
    await page.getByRole('button', { name: 'Trace' }).first().click();
    await page.getByText('Lot R-BAD is in 4 hulls.').waitFor();
    await page.getByRole('link', { name: 'Traces' }).click();
    await page.getByLabel('Hull numbers or HINs').fill('86-1, 86-2');
    await page.getByRole('button', { name: 'Trace' }).last().click();
    await page.getByText(/^In 86-1, 86-2 there are/).waitFor();
    await page.getByRole('link', { name: 'R-BAD' }).click();
    await page.getByRole('link', { name: 'See where it went' }).click();
    await page.getByText('Lot R-BAD is in 4 hulls.').waitFor();
    await close();
  });
});

describe('the pages of traces', () => {
  it.each([
    [LOT, '**/api/lots/R-BAD/trace', 'the trace of R-BAD'],
    ['/trace/hulls/86-1', '**/api/hulls/86-1/trace', 'the trace of 86-1'],
  ])('say that a request failed: %s', async (address, path, what) => {
    await seeNotRead(address, path, what);
  });

  it.each([
    ['/trace/lots/NONE', 'There is no lot NONE.'],
    ['/trace/hulls/NONE', 'There is no hull NONE.'],
  ])('say at %s that there is none', async (address, words) => {
    await open(address);
    await page.getByText(words).waitFor();
    await watched.close();
  });

  it.each([
    [LOT, 'Lot R-BAD is in 4 hulls', 'El lote R-BAD está en 4 cascos'],
    [`${LOT}?pick=T1-2`, 'Lot R-BAD is in 4 hulls', 'El lote R-BAD está en 4 cascos'],
    ['/trace/hulls/86-3', 'In 86-3 there are', 'En 86-3 hay'],
    ['/trace', 'From a lot to every hull', 'De un lote a cada casco'],
  ])('%s is without a finding of the accessibility checker', async (address, english, spanish) => {
    await open(address, { viewport: { width: 1280, height: 800 } });
    await page.getByText(english).first().waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await close();
    await open(address, { ...PHONE, colorScheme: 'dark', locale: 'es-MX' });
    await page.getByText(spanish).first().waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await close();
  });
});
