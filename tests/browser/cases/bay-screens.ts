import { afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import { Shop } from '../../support/shop.js';
import { axeFindings } from '../../support/web/axe.js';
import { open, page, service, watched } from '../stage.js';
import { atTablet, TABLET } from './at-bay.js';

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, locale: 'es-MX' };

/** Each address of the bay, with a text that it shows when it is whole, in English and in Spanish. */
const PAGES = [
  ['/station/bay', 'Scan or enter the hull', 'Escanee o escriba el casco'],
  ['/station/bay/86-1-H', 'Defects of 86-1-H', 'Defectos de 86-1-H'],
  ['/station/bay/86-1-H/defect', 'Layer it lies in', 'Capa en la que está'],
  ['/station/bay/86-2-H/repair', 'Before you begin', 'Antes de empezar'],
  ['/station/bay/86-1-H/touch-up', 'Largest, mm', 'El mayor, mm'],
  ['/station/bay/86-1-H/judge/R1', 'Look at it, tap it', 'Mírelo, golpéelo'],
  ['/station/bay/86-2-H/answer/D1', 'Of which bucket or gun', '¿De qué cubo o pistola'],
  ['/station/bay/NONE', 'There is no part NONE', 'No existe la pieza NONE'],
] as const;

describe('each address of the bay', () => {
  beforeAll(async () => {
    await new Shop(service).act('/api/parts/86-2-H/defects', {
      ...{ kind: 'undercure', layer: 'L2', lengthMm: 40, widthMm: 30, depthMm: 2 },
      place: { surface: 'shell', side: 'starboard', fromTransomMm: 2_000, girthMm: 700 },
    });
  });
  afterEach(() => watched.close());

  it.each(PAGES)('%s has no finding of the accessibility checker on a tablet', async (address, words, _) => {
    await open(address, { ...TABLET, colorScheme: 'dark' }, 'INS-1');
    await page.getByText(words).first().waitFor();
    expect(await axeFindings(page)).toEqual([]);
  });

  it.each(PAGES)('%s has none on a telephone in Spanish, and nothing small to press', async (address, _, words) => {
    await open(address, PHONE, 'INS-1');
    await page.getByText(words).first().waitFor();
    expect(await axeFindings(page)).toEqual([]);
    const small = await page.evaluate<string[]>(
      `[...document.querySelectorAll('main button, main .btn, main .key, main .task, main select, main input:not([type=radio], [type=checkbox], [type=file]), main textarea, main summary, main .check')]
        .filter((each) => each.offsetParent !== null && !each.matches('.spot-button') && (each.offsetHeight < 48 || each.offsetWidth < 48))
        .map((each) => each.outerHTML.slice(0, 90))`,
    );
    expect(small).toEqual([]);
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
  });
});

describe('a label that is scanned at the station', () => {
  afterEach(() => watched.close());

  it.each([
    ['/l/part/86-1-H', '/station/bay/86-1-H'],
    ['https://plant.example/l/lot/R-BAD', '/lots/R-BAD'],
  ])('%s opens what it is on', async (scanned, opened) => {
    const inspector = atTablet();
    await open('/station/bay', TABLET, 'INS-1');
    await inspector.type('Hull or part', scanned);
    // A scanner ends with the key that sends.
    await page.keyboard.press('Enter');
    await page.waitForURL((url) => url.pathname === opened);
  });
});

describe('the hull map that is touched', () => {
  afterEach(() => watched.close());

  it('takes a place by touch, by typed distances, and by the keyboard', async () => {
    const inspector = atTablet();
    await open('/station/bay/86-2-H/defect', TABLET, 'INS-1');
    await inspector.touchHull(0.5, 0.3);
    await inspector.tap('radio', 'Blister');
    await inspector.tap('radio', /^4$/);
    expect(await axeFindings(page)).toEqual([]);
    const where = page.locator('.where');
    await where.getByText(/port/i).waitFor();
    await page.getByText('Enter the distances instead').click();
    await inspector.type('From the transom, mm', '3420');
    await inspector.type('From the keel along the skin, mm', '900');
    await where.getByText('3.42 m from the transom').waitFor();
    const loupe = page.getByRole('application', { name: 'The place of the mark, nearer' });
    await loupe.focus();
    await page.keyboard.press('ArrowUp');
    await where.getByText('0.91 m from the keel').waitFor();
    // Seen from below the bow is on the left: what is moved left is moved forward.
    await page.keyboard.press('Shift+ArrowLeft');
    await where.getByText('3.52 m from the transom').waitFor();
    const near = await loupe.locator('svg').first().getAttribute('viewBox');
    await page.keyboard.press('+');
    expect(await loupe.locator('svg').first().getAttribute('viewBox')).not.toBe(near);
    await inspector.tap('button', 'Down by 10 mm');
    await where.getByText('0.9 m from the keel').waitFor();
    await inspector.type('From the keel along the skin, mm', '99999');
    await page.getByRole('alert').getByText('Not on the skin:').waitFor();
  });
});
