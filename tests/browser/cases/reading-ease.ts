import { beforeEach, describe, expect, it } from '@jest/globals';
import { close, open, page } from '../stage.js';

describe.each(['light', 'dark'] as const)('in %s', (colorScheme) => {
  beforeEach(() => open('/hulls/86-1', { colorScheme }));

  it('words stand out from the ground by 4.5 to 1 or more', async () => {
    await page.getByText('Not ready for release').waitFor();
    const ground = rgb(await page.evaluate<string>('getComputedStyle(document.body).backgroundColor'));
    const inks = await page.evaluate<string[]>(
      "[...document.querySelectorAll('main *')].filter((e) => e.textContent && !e.closest('.tape, .definitions')).map((e) => getComputedStyle(e).color)",
    );
    for (const ink of new Set(inks)) expect(contrast(rgb(ink), ground)).toBeGreaterThanOrEqual(4.5);
    expect(luminance(ground) < 0.2).toBe(colorScheme === 'dark');
    await close();
  });
});

describe('on a phone', () => {
  it.each(['/hulls/86-1', '/lots/R-BAD', '/lots', '/search?hulls=86-1,86-2'])(
    '%s needs no scrolling sideways',
    async (address) => {
      await open(address, { viewport: { width: 390, height: 844 } });
      await page.getByRole('rowheader').first().waitFor();
      await page.waitForLoadState('networkidle');
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
      await close();
    },
  );
});

describe('by keyboard', () => {
  it('the first stop skips to the page, and a focused link is outlined', async () => {
    await open('/hulls');
    await page.getByRole('rowheader').first().waitFor();
    await page.keyboard.press('Tab');
    expect(await page.evaluate('document.activeElement.innerText')).toBe('Skip to the page');
    await page.keyboard.press('Enter');
    expect(await page.evaluate('document.activeElement.id')).toBe('page');
    await page.getByRole('link', { name: '86-6' }).focus();
    await page.keyboard.press('Tab');
    expect(await page.evaluate('getComputedStyle(document.activeElement).outlineStyle')).toBe('solid');
    await close();
  });
});

const rgb = (css: string): readonly number[] => (css.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
const luminance = (colour: readonly number[]): number => {
  const [r = 0, g = 0, b = 0] = colour.map((part) => {
    const c = part / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

const contrast = (a: readonly number[], b: readonly number[]): number => {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
};
