import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { axeFindings } from '../support/web/axe.js';
import { seeNotRead } from './not-read.js';
import { clearStage, close, open, page, rowsOf, setStage, watched } from './stage.js';

// Four defects stand on the hull moldings of the story: three void or dry spots on 86-1 and 86-4, below the waterline.
beforeAll(setStage, 120_000);
afterAll(clearStage);

const LIST = /^Defects (on the map|in the area)/;
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
const rows = () =>
  page
    .getByRole('table', { name: LIST })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader') });
const board = () => page.getByRole('group', { name: /^Hull map: arrow keys/ });
const seen = async (): Promise<readonly number[]> =>
  ((await board().locator('svg').getAttribute('viewBox')) ?? '').split(' ').map(Number);

describe('the map of many hulls', () => {
  it('says in a sentence what it shows, draws it and lists it', async () => {
    await open('/map');
    await page.getByText('3 defects on 2 of 6 parts that fit.').first().waitFor();
    await rows().first().waitFor();
    expect(await rows().count()).toBe(3);
    expect(await board().getByRole('img').getAttribute('aria-label')).toContain('3 defects on 2 of 6 parts');
    expect((await page.locator('.dots').getAttribute('d'))?.split('M')).toHaveLength(4);
    expect(await board().getByText('2 m').count()).toBe(1);
    await close();
  });

  it('is narrowed by kind, mold, layer, lot and period; the address keeps it', async () => {
    await open('/map');
    await rows().nth(2).waitFor();
    await page.getByLabel('Defect', { exact: true }).selectOption('air-bubble');
    await page.getByLabel('Parts that hold lot').fill('R-BAD');
    await page.getByLabel('Found from').fill('2026-01-01');
    await page.getByRole('button', { name: 'Show', exact: true }).click();
    await page.getByText('2 defects on 2 of 4 parts that fit.').first().waitFor();
    const query = new URL(page.url()).searchParams;
    expect([query.get('kind'), query.get('lot'), query.get('from')]).toEqual(['air-bubble', 'R-BAD', '2026-01-01']);
    await page.reload();
    await page.getByText('2 defects on 2 of 4 parts that fit.').first().waitFor();
    expect(await page.getByLabel('Parts that hold lot').inputValue()).toBe('R-BAD');
    await page.getByLabel('Found until').fill('2026-01-01');
    await page.getByRole('button', { name: 'Show', exact: true }).click();
    await page.getByText('No defect fits on 0 of 4 parts').first().waitFor();
    await page.getByText('No defect fits. Choose a larger area').waitFor();
    await close();
  });

  it('names a lot that is not there beside its field', async () => {
    await open('/map?lot=NONE');
    await page
      .getByRole('alert')
      .filter({ hasText: 'the defects on the map' })
      .getByText('There is no lot NONE.')
      .waitFor();
    await watched.close();
  });

  it('lists an area that is dragged, and one that is typed', async () => {
    await open('/map');
    await rows().nth(2).waitFor();
    await page.getByRole('button', { name: 'Drag chooses an area' }).click();
    const box = await board().locator('svg').boundingBox();
    if (box === null) throw new Error('There is no drawing.');
    // Port is up: the upper half of the drawing has the two spots on the port side.
    await page.mouse.move(box.x + 4, box.y + 4);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.8, box.y + box.height / 2 - 2, { steps: 4 });
    await page.mouse.up();
    await page.getByText('In the area: 2 defects on 2 parts.').waitFor();
    await page.getByRole('table', { name: /in the area.*port/ }).waitFor();
    expect(await rows().count()).toBe(2);
    expect(new URL(page.url()).searchParams.get('area')).toMatch(/^shell,/);
    await page.getByRole('button', { name: 'Leave the area' }).click();
    await rows().nth(2).waitFor();
    await page.getByLabel('Out from the keel, mm').fill('-1000');
    await page.getByLabel('out to, mm').fill('0');
    await page.getByRole('button', { name: 'List its defects' }).first().click();
    await page.getByText('In the area: 1 defect on 1 part.').waitFor();
    await close();
  });

  it('has a table of its fullest squares, each of which leads to its list', async () => {
    await open('/map');
    await page.getByText('Table of the fullest squares').click();
    const squares = rowsOf('The 3 fullest of 3 squares with a defect');
    expect(await squares.count()).toBe(3);
    await squares.first().getByRole('button', { name: 'List its defects' }).click();
    await page.getByText('In the area: 1 defect on 1 part.').waitFor();
    await close();
  });

  it('is enlarged and moved by wheel, keys and buttons, and never beyond its edge', async () => {
    await open('/map');
    await page.getByText('3 defects on').first().waitFor();
    const all = await seen();
    await board().locator('svg').hover();
    await page.mouse.wheel(0, -100);
    await expectSoon(
      async () => (await seen())[2] ?? 0,
      (width) => width < (all[2] ?? 0),
    );
    await board().focus();
    await page.keyboard.press('0');
    expect(await seen()).toEqual(all);
    await page.keyboard.press('+');
    const near = await seen();
    await page.keyboard.press('ArrowRight');
    expect((await seen())[0]).toBeGreaterThan(near[0] ?? 0);
    for (let i = 0; i < 20; i += 1) await page.keyboard.press('ArrowRight');
    const [x = 0, , width = 0] = await seen();
    expect(x + width).toBeCloseTo(all[2] ?? 0, 0);
    await page.getByRole('button', { name: 'All of it' }).click();
    expect(await seen()).toEqual(all);
    await close();
  });

  it('is enlarged by two fingers', async () => {
    await open('/map', PHONE);
    await page.getByText('3 defects on').first().waitFor();
    await board().locator('svg').scrollIntoViewIfNeeded();
    const [, , before = 0] = await seen();
    const box = await board().locator('svg').boundingBox();
    const cdp = await page.context().newCDPSession(page);
    const touch = (type: string, apart: number) =>
      cdp.send('Input.dispatchTouchEvent', {
        type: type as 'touchStart',
        touchPoints:
          type === 'touchEnd'
            ? []
            : [-1, 1].map((side) => ({
                x: (box?.x ?? 0) + (box?.width ?? 0) / 2 + side * apart,
                y: (box?.y ?? 0) + (box?.height ?? 0) / 2,
              })),
      });
    await touch('touchStart', 20);
    for (const apart of [40, 60, 80]) await touch('touchMove', apart);
    await touch('touchEnd', 80);
    await expectSoon(
      async () => (await seen())[2] ?? 0,
      (width) => width < before / 1.5,
    );
    await watched.close();
  });

  it.each([
    ['**/api/models', 'the models to choose from'],
    ['**/api/molds', 'the models to choose from'],
    ['**/api/defect-kinds', 'the models to choose from'],
    ['**/api/models/TS86/defect-map?**', 'the defects on the map'],
    ['**/api/models/TS86/defects?**', 'defects'],
  ])('says that %s failed: %s', async (path, what) => {
    await seeNotRead('/map', path, what);
  });

  it.each([
    ['at a desk', 'en-US', { viewport: { width: 1280, height: 800 } }, '3 defects on'],
    ['on a phone in the dark, in Spanish', 'es-MX', { ...PHONE, colorScheme: 'dark' as const }, '3 defectos en'],
  ])('is without a finding of the accessibility checker %s', async (_, locale, options, words) => {
    await open('/map?area=shell,0,5000,-900,900', { ...options, locale });
    await page.getByText(words).first().waitFor();
    await rows()
      .first()
      .waitFor()
      .catch(() => undefined);
    await page.waitForLoadState('networkidle');
    expect(await axeFindings(page)).toEqual([]);
    await close();
  });

  it('does not move when its defects arrive', async () => {
    await open('/settings');
    await page.route('**/defect-map?**', async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 700));
      await route.continue();
    });
    await page.goto(new URL('/map', page.url()).href);
    await board().waitFor();
    const before = await board().boundingBox();
    await page.getByText('3 defects on').first().waitFor();
    expect(await board().boundingBox()).toEqual(before);
    await watched.close();
  });
});

const expectSoon = async <T>(read: () => Promise<T>, holds: (value: T) => boolean): Promise<void> => {
  for (let tries = 0; tries < 40; tries += 1) {
    if (holds(await read())) return;
    await page.waitForTimeout(50);
  }
  throw new Error(`It stayed ${String(await read())}.`);
};
