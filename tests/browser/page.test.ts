import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Browser, Page } from 'playwright-core';
import { buildWeb, openPage, startBrowser, WEB_DIR, type Watched } from '../support/browser.js';
import { IMAGE, recordStory } from '../support/page-story.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

let service: RunningService;
let browser: Browser;
let watched: Watched;
let page: Page;

beforeAll(async () => {
  buildWeb();
  service = await startService({ webDir: WEB_DIR });
  await recordStory(await new Shop(service).open());
  browser = await startBrowser();
}, 120_000);
afterAll(async () => {
  await browser?.close();
  await service?.close();
});

/** Opens a page of its own, on an address after the #. */
const open = async (hash: string, options = {}): Promise<void> => {
  watched = await openPage(browser, options);
  page = watched.page;
  await page.goto(`${service.url}/${hash}`);
};

/** Closes it; a page that wrote an error or broke the security policy fails. */
const close = async (): Promise<void> => {
  await watched.close();
  expect(watched.complaints).toEqual([]);
};

const rowsOf = (caption: string) =>
  page
    .getByRole('table', { name: caption })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader') });

describe('the page of a hull', () => {
  it('is found by a part of its number, and opened', async () => {
    await open('');
    await page.getByRole('navigation').getByRole('link', { name: 'Hulls' }).click();
    await page.getByLabel('Part of a hull number or HIN').fill('6-1');
    await page.getByRole('button', { name: 'Show' }).click();
    await page
      .getByRole('table', { name: /holds “6-1”/ })
      .getByRole('link', { name: '86-1' })
      .click();
    await page.getByRole('heading', { name: 'Hull molding 86-1-H' }).waitFor();
    expect(new URL(page.url()).hash).toBe('#/hulls/86-1');
    expect(await page.title()).toBe('Hull 86-1 · Hull Record');
    expect(await page.evaluate('document.activeElement.tagName')).toBe('H1');
    await close();
  });

  it('shows its layers outside in, with lots, readings with verdicts, and signatures', async () => {
    await open('#/hulls/86-1');
    const layers = rowsOf('Laminate of 86-1-H, outside first');
    await layers.first().waitFor();
    expect(await layers.count()).toBe(3);
    const gelCoat = layers.nth(0);
    expect(await gelCoat.getByRole('img').getAttribute('aria-label')).toBe('Band of Gel coat: solid, gel coat, made.');
    expect(await gelCoat.innerText()).toMatch(/L1 Gel coat[^]*G-1 18 kg, weighed[^]*limit 16 to 20 mil/);
    expect(await gelCoat.getByRole('listitem').filter({ hasText: 'mil' }).allInnerTexts()).toEqual([
      expect.stringMatching(/16–18 mil \(406–457 µm\)\s+inside/),
      expect.stringMatching(/18–20 mil \(457–508 µm\)\s+inside/),
      expect.stringMatching(/18–20 mil \(457–508 µm\)\s+inside/),
    ]);
    expect(await gelCoat.innerText()).toMatch(/HP 1 · INS-1 · 5 Jan 2026, \d\d:\d\d/);
    expect(await layers.nth(1).innerText()).toMatch(/T1-1 20 kg, weighed, from tank T1[^]*S-R-BAD/);
    await close();
  });

  it('marks each defect on the hull map where it is, and leads from the mark to its row', async () => {
    await open('#/hulls/86-1');
    const mark = page.getByRole('button', { name: 'D1: Air bubble (void), open' });
    await mark.waitFor();
    const board = (await page.getByRole('img', { name: /^Hull map of 86-1-H with 2 defects/ }).boundingBox())!;
    const spot = (await mark.boundingBox())!;
    // 8.6 m hull, transom 0.9 m behind a gap of 0.3 m, 0.25 m of margin; seen from below the bow is on the left.
    expect((spot.x + 13.5 - board.x) / board.width).toBeCloseTo((250 + 8_600 - 3_420) / (8_600 + 1_200 + 500), 2);
    expect((spot.y + spot.height / 2 - board.y) / board.height).toBeCloseTo((2_050 + 250 - 900) / (2 * 2_300), 2);
    await mark.click();
    expect(await page.evaluate('document.activeElement.innerText')).toMatch(/^D1[^]*3.420 mm from the transom[^]*open/);
    await close();
  });

  it('says what is in the way of release, which repairs were done, and which lots came by which way', async () => {
    await open('#/hulls/86-1');
    await rowsOf('Received lots, by role').first().waitFor();
    expect(await page.getByText('Not ready for release: 1 thing in the way.').count()).toBe(1);
    expect(await rowsOf('To settle before this hull can be released').innerText()).toMatch(/open[^]*86-1-H[^]*L2/);
    expect(await rowsOf('Repairs of 86-1-H, as done').innerText()).toMatch(
      /R1[^]*D2[^]*taper 12:1[^]*accepted · QUA-1/,
    );
    const bad = rowsOf('Received lots, by role').filter({ hasText: 'S-R-BAD' });
    expect(await bad.innerText()).toMatch(/80 kg[^]*100 %[^]*layer L2: 20 kg, 100 %, by R-BAD → T1-1/);
    expect(await page.getByRole('heading', { name: 'Deck 86-1-D' }).count()).toBe(1);
    await close();
  });

  it('links to the build record, which is a PDF', async () => {
    await open('#/hulls/86-1');
    const href = await page.getByRole('link', { name: 'Build record' }).getAttribute('href');
    const paper = await fetch(`${service.url}${href}`);
    expect([paper.status, paper.headers.get('content-type')]).toEqual([200, 'application/pdf']);
    expect(
      Buffer.from(await paper.arrayBuffer())
        .subarray(0, 5)
        .toString('latin1'),
    ).toBe('%PDF-');
    await close();
  });

  it('shows what is to come of a hull that was only begun', async () => {
    await open('#/hulls/86-6');
    const layers = rowsOf('Laminate of 86-6-H, outside first');
    await layers.first().waitFor();
    expect(await layers.nth(0).innerText()).toMatch(/wet film: not read yet, 3 spots[^]*to come[^]*ends in HP 1/);
    await close();
  });

  it('says so when there is no such hull, and where to look', async () => {
    await open('#/hulls/99-9');
    await page.getByText('There is no hull 99-9.').waitFor();
    expect(await page.getByRole('main').getByRole('link', { name: 'list of hulls' }).getAttribute('href')).toBe(
      '#/hulls',
    );
    await watched.close();
    // The browser itself notes the 404; nothing else is complained of.
    expect(watched.complaints).toEqual([expect.stringContaining('404')]);
  });
});

describe('the page of a lot', () => {
  const holders = async (): Promise<(readonly string[])[]> => {
    const rows = rowsOf('Hulls and parts that hold lot R-BAD');
    await rows.first().waitFor();
    return Promise.all(
      (await rows.all()).map(async (row) => (await row.locator('th, td').allInnerTexts()).slice(0, 4)),
    );
  };

  it('lists exactly the hulls that hold it: straight, through the heel of a tank, and through a repair', async () => {
    await open('#/lots/R-BAD');
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
    await open('#/lots/R-BAD');
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
    await open('#/lots/T1-2');
    await rowsOf('Mass fractions of received lots').first().waitFor();
    expect(await rowsOf('Mass fractions of received lots').allInnerTexts()).toEqual([
      expect.stringMatching(/R-GOOD\s+resin\s+82.5 %/),
      expect.stringMatching(/R-BAD\s+resin\s+17.5 %/),
    ]);
    expect(await rowsOf('Lots put into this one').count()).toBe(2);
    await close();
  });

  it('is found in the list by its state', async () => {
    await open('#/lots');
    await page.getByLabel('State').selectOption('quarantined');
    await page.getByRole('button', { name: 'Show' }).click();
    const rows = rowsOf('Lots, the newest first');
    await rows.filter({ hasText: 'G-1' }).waitFor({ state: 'detached' });
    expect(await rows.getByRole('rowheader').allInnerTexts()).toEqual(['R-ODD']);
    await close();
  });
});

describe('the search', () => {
  it('finds hulls and lots by part of a number', async () => {
    await open('#/search');
    await page.getByLabel('Hull number, HIN or lot').fill('bad');
    await page.getByRole('button', { name: 'Find' }).click();
    await page.getByRole('link', { name: 'R-BAD' }).waitFor();
    expect(await page.getByText('No hull number or HIN holds “bad”.').count()).toBe(1);
    await close();
  });

  it('tells which lots some hulls share, and how many others hold each', async () => {
    await open('#/search');
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
    await open('#/search?hulls=86-1,nowhere');
    await page.getByRole('alert').getByText('There is no hull nowhere.').waitFor();
    await watched.close();
    expect(watched.complaints).toHaveLength(1);
  });
});

describe('the lots at a defect', () => {
  it('are followed from its row, and name the other hulls that hold them', async () => {
    await open('#/hulls/86-1');
    await page.getByRole('link', { name: 'lots at D1' }).click();
    const bad = rowsOf('Lots in the layer and place of the defect').filter({ hasText: 'R-BAD' });
    await bad.waitFor();
    expect(await bad.innerText()).toMatch(/20 kg[^]*100 %[^]*3 hulls: 86-2, 86-3, 86-4/);
    await close();
  });
});

describe('a list longer than a page', () => {
  it('shows more when asked, and says when that is all', async () => {
    await open('');
    const rows = rowsOf('The hulls begun last');
    await rows.first().waitFor();
    expect(await rows.count()).toBe(5);
    await page.getByRole('button', { name: 'Show more hulls' }).click();
    await page.getByText('All hulls: 6.').waitFor();
    expect(await rows.getByRole('rowheader').allInnerTexts()).toEqual(['86-6', '86-5', '86-4', '86-3', '86-2', '86-1']);
    await close();
  });
});

describe('what people typed', () => {
  it.each(['#/hulls/86-1', '#/lots/R-ODD', '#/lots', `#/search?for=${encodeURIComponent(IMAGE)}`])(
    'stays text at %s',
    async (hash) => {
      await open(hash);
      await page.getByText(IMAGE).first().waitFor();
      expect(await page.evaluate('window.ran')).toBeUndefined();
      expect(await page.locator('main script, main img').count()).toBe(0);
      await close();
    },
  );
});

describe('when the service fails', () => {
  it('says what was not read and reads it at the next try', async () => {
    await open('');
    await page.route('**/api/hulls/86-1', (route) => route.fulfill({ status: 500, body: '{"detail":"inner words"}' }));
    await page.goto(`${service.url}/#/hulls/86-1`);
    const alert = page.getByRole('alert');
    await alert.waitFor();
    expect(await alert.innerText()).toMatch(
      /Not read: hull 86-1\.[^]*The service failed \(500\)\. Nothing was changed\./,
    );
    await page.unroute('**/api/hulls/86-1');
    await alert.getByRole('button', { name: 'Try again' }).click();
    await page.getByRole('heading', { name: 'Hull molding 86-1-H' }).waitFor();
    await watched.close();
  });

  it('says so when nothing answers', async () => {
    await open('');
    await page.route('**/api/lots**', (route) => route.abort());
    await page.goto(`${service.url}/#/lots`);
    await page.getByRole('alert').filter({ hasText: 'Not read: lots.' }).getByText('does not answer').waitFor();
    await watched.close();
  });

  it('says that it loads until the answer is there', async () => {
    await open('');
    let answer: () => void = () => undefined;
    const asked = new Promise<void>((resolve) => (answer = resolve));
    await page.route('**/api/lots/R-BAD', async (route) => asked.then(() => route.continue()));
    await page.goto(`${service.url}/#/lots/R-BAD`);
    await page.getByText('Loading lot R-BAD …').waitFor();
    answer();
    await rowsOf('Hulls and parts that hold lot R-BAD').first().waitFor();
    await close();
  });
});

describe.each(['light', 'dark'] as const)('in %s', (colorScheme) => {
  beforeEach(() => open('#/hulls/86-1', { colorScheme }));

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
  it.each(['#/hulls/86-1', '#/lots/R-BAD', '#/lots', '#/search?hulls=86-1,86-2'])(
    '%s needs no scrolling sideways',
    async (hash) => {
      await open(hash, { viewport: { width: 390, height: 844 } });
      await page.getByRole('rowheader').first().waitFor();
      await page.waitForLoadState('networkidle');
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
      await close();
    },
  );
});

describe('by keyboard', () => {
  it('the first stop skips to the page, and a focused link is outlined', async () => {
    await open('#/hulls');
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
