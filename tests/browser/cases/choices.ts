import { describe, expect, it } from '@jest/globals';
import { close, open, page, rowsOf } from '../stage.js';

const choose = (group: string, name: string): Promise<void> =>
  page.getByRole('radiogroup', { name: group }).getByText(name, { exact: true }).click();

const lang = (): Promise<unknown> => page.evaluate('document.documentElement.lang');

describe('the language', () => {
  it('is that of the browser at first', async () => {
    await open('/hulls/86-1', { locale: 'es-MX' });
    await page.getByText('No está listo para liberar: 1 asunto lo impide.').waitFor();
    await rowsOf('Lotes recibidos, por función').first().waitFor();
    expect([await lang(), await page.title()]).toEqual(['es', 'Casco 86-1 · Hull Record']);
    const gelCoat = rowsOf('Laminado de 86-1-H, de fuera adentro').nth(0);
    expect(await gelCoat.innerText()).toMatch(/G-1 18 kg, pesado[^]*película húmeda, límite 16 a 20 mil/);
    expect(await gelCoat.innerText()).toMatch(/HP 1 · INS-1 · 5 ene 2026, \d\d:\d\d/);
    const english = page.locator('[lang=en]').filter({ hasText: 'Each spot is judged' });
    expect(await english.count()).toBeGreaterThan(0);
    await close();
  });

  it('is chosen, kept on the device, and can be chosen back', async () => {
    await open('/settings');
    await choose('Texts of this page', 'Español');
    await page.getByRole('heading', { name: 'Ajustes' }).waitFor();
    await page.goto(new URL('/lots', page.url()).href);
    await rowsOf('Lotes, los más nuevos primero').first().waitFor();
    expect(await lang()).toBe('es');
    await page.getByRole('link', { name: 'Ajustes' }).click();
    await choose('Textos de esta página', 'English');
    await page.getByRole('heading', { name: 'Settings' }).waitFor();
    expect(await lang()).toBe('en');
    await close();
  });
});

describe('the units', () => {
  it('are chosen, and every figure says what was entered too', async () => {
    await open('/settings');
    await choose('Film', 'µm');
    await choose('Mass', 'lb');
    await page.goto(new URL('/hulls/86-1', page.url()).href);
    const gelCoat = rowsOf('Laminate of 86-1-H, outside first').nth(0);
    await gelCoat.waitFor();
    expect(await gelCoat.innerText()).toMatch(/18 kg, that is 39.68 lb[^]*limit 406 to 508 µm \(16 to 20 mil\)/);
    expect(await gelCoat.innerText()).toMatch(/406–457 µm \(16–18 mil\)/);
    const bad = rowsOf('Received lots, by role').filter({ hasText: 'S-R-BAD' });
    expect(await bad.innerText()).toContain('176.4 lb');
    await close();
  });
});

describe('times', () => {
  it('are by the clock of the plant, not of the device', async () => {
    const told: string[] = [];
    for (const timezoneId of ['America/New_York', 'Asia/Tokyo']) {
      await open('/hulls/86-1', { timezoneId });
      const life = rowsOf('What happened to this hull').first();
      told.push(await life.innerText());
      expect(await page.getByRole('contentinfo').innerText()).toContain('America/New_York, GMT');
      await close();
    }
    expect(told[1]).toBe(told[0]);
  });
});

describe('the theme', () => {
  const ground = (): Promise<unknown> => page.evaluate('getComputedStyle(document.body).backgroundColor');

  it.each([
    ['light', 'rgb(246, 243, 234)'],
    ['dark', 'rgb(19, 26, 38)'],
    ['glare', 'rgb(255, 255, 255)'],
  ])('%s is chosen whatever the device has, and kept', async (theme, colour) => {
    await open('/settings', { colorScheme: theme === 'dark' ? 'light' : 'dark' });
    await choose('Theme', theme);
    expect(await ground()).toBe(colour);
    await page.reload();
    await page.getByRole('heading', { name: 'Settings' }).waitFor();
    expect(await ground()).toBe(colour);
    await close();
  });

  it('is glare at one touch from any page, and at another what it was', async () => {
    await open('/hulls', { colorScheme: 'dark' });
    const glare = page.getByRole('button', { name: 'Glare' });
    await glare.click();
    expect([await ground(), await glare.getAttribute('aria-pressed')]).toEqual(['rgb(255, 255, 255)', 'true']);
    await glare.click();
    expect([await ground(), await glare.getAttribute('aria-pressed')]).toEqual(['rgb(19, 26, 38)', 'false']);
    await close();
  });
});

describe('by keyboard', () => {
  it('one chooses among few by arrows, and unfolds by Enter', async () => {
    await open('/settings');
    await page.getByRole('radio', { name: 'kg' }).focus();
    await page.keyboard.press('ArrowRight');
    expect(await page.getByRole('radio', { name: 'lb' }).isChecked()).toBe(true);
    await page.goto(new URL('/hulls/86-1', page.url()).href);
    const fold = page.locator('summary').first();
    await fold.focus();
    await page.keyboard.press('Enter');
    expect(await page.evaluate('document.activeElement.parentElement.open')).toBe(true);
    await close();
  });
});
