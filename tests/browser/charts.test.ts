import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { kg, type Shop } from '../support/shop.js';
import { axeFindings } from '../support/web/axe.js';
import { clearStage, close, open, page, rowsOf, service, setStageOf } from './stage.js';

const PATH = '/charts/thickness?model=TS86&part=hull%20molding&layer=L2';
/** Thickness in mm at two spots of each hull; the last hull is far from the others. */
const HULLS = [3.1, 3.3, 3.2, 3.5, 3.0, 3.4, 3.2, 3.1, 3.3, 3.4, 3.2, 5.2];

const readHulls = async (shop: Shop): Promise<void> => {
  await shop.open();
  await shop.receive('R-1', 'RES-VE');
  for (const [i, mm] of HULLS.entries()) {
    await shop.startHull(`86-${i + 1}`);
    const layer = await shop.layer(`86-${i + 1}`, 'L2', [{ lot: 'R-1', amount: kg(5) }]);
    const spots = [mm - 0.1, mm + 0.1].map((value) => ({ value: value.toFixed(1) }));
    await shop.act(`/api/layers/${layer}/readings`, { what: 'thickness', unit: 'mm', spots });
  }
};

beforeAll(() => setStageOf(readHulls), 120_000);
afterAll(clearStage);

describe('the charts of a process', () => {
  it('are found from the quality desk', async () => {
    await open('/quality', {}, 'QUA-1');
    await page.getByRole('link', { name: 'Process charts' }).click();
    await page.getByRole('link', { name: 'wet film' }).waitFor();
    await close();
  });

  it('say in words and by a square which hull breaks a rule, in a sentence what each shows, and the figures behind', async () => {
    await open(PATH, {}, 'QUA-1');
    await page.getByText(/12 86-12: .*jump from the hull before/).waitFor();
    await page.getByText('Fewer than 20 hulls').waitFor();
    const drawings = page.getByRole('img', { name: /^12 hulls from 3\.0?/ });
    expect(await drawings.count()).toBeGreaterThan(0);
    expect(await page.locator('.process .broken').count()).toBeGreaterThan(0);
    const [newest] = await rowsOf('Hull by hull, the newest first, in mm').allInnerTexts();
    expect(newest).toContain('86-12');
    expect(await page.getByText('Nothing is specified').count()).toBe(1);
    await close();
  });

  it('open the hull of a point that is touched', async () => {
    await open(PATH, {}, 'QUA-1');
    const drawing = page.locator('.process svg').first();
    await drawing.waitFor();
    const { width } = (await drawing.boundingBox()) ?? { width: 0 };
    await drawing.click({ position: { x: width - 84 - 12, y: 60 } });
    await page.getByRole('heading', { name: '86-12' }).first().waitFor();
    await close();
  });

  it('are frozen from a period by quality, and by nobody else', async () => {
    await open(PATH, {}, 'INS-1');
    await page.locator('summary', { hasText: 'Freeze limits' }).click();
    await page.getByText(/Freeze limits from a period: .*quality/).waitFor();
    await close();
    await open(PATH, {}, 'QUA-1');
    await page.locator('summary', { hasText: 'Freeze limits' }).click();
    const form = page.locator('.record-form');
    await form.getByLabel('Read from').fill('2026-01-01');
    await form.getByLabel('to', { exact: true }).fill('2026-01-31');
    await form.getByLabel('Reason').fill('a calm stretch');
    await page.getByRole('button', { name: 'Freeze the limits' }).click();
    await page.getByRole('button', { name: 'Yes, record it' }).click();
    await page.getByText('Limits are frozen from 12 hulls.').waitFor();
    await page.getByText('Limits frozen from 12 hulls', { exact: false }).first().waitFor();
    await close();
    const chart = await fetch(`${service.url}/api${PATH}`, { headers: await service.signedIn() });
    expect(await chart.json()).toMatchObject({ frozen: { by: 'QUA-1', reason: 'a calm stretch' } });
  });

  it.each([
    [{ viewport: { width: 1280, height: 800 } }, 'Mean of each hull'],
    [{ viewport: { width: 390, height: 844 }, locale: 'es-MX', colorScheme: 'dark' }, 'Media de cada casco'],
  ] as const)('are without a finding of the accessibility checker: %j', async (options, words) => {
    await open(PATH, options);
    await page.getByText(words).first().waitFor();
    await page.waitForLoadState('networkidle');
    expect(await axeFindings(page)).toEqual([]);
    const shots = process.env['SHOTS'];
    if (shots !== undefined)
      await page.screenshot({ path: `${shots}/charts-${options.viewport.width}.png`, fullPage: true });
    await close();
  });
});
