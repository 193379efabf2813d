import { describe, expect, it } from '@jest/globals';
import { close, open, page, rowsOf, service, watched } from '../stage.js';

describe('the page of a hull', () => {
  it('is found by a part of its number, and opened', async () => {
    await open('/');
    await page.getByRole('navigation').getByRole('link', { name: 'Hulls' }).click();
    await page.getByLabel('Part of a hull number or HIN').fill('6-1');
    await page.getByRole('button', { name: 'Show' }).click();
    await page
      .getByRole('table', { name: /holds “6-1”/ })
      .getByRole('link', { name: '86-1' })
      .click();
    await page.getByRole('heading', { name: 'Hull molding 86-1-H' }).waitFor();
    expect(new URL(page.url()).pathname).toBe('/hulls/86-1');
    expect(await page.title()).toBe('Hull 86-1 · Hull Record');
    expect(await page.evaluate('document.activeElement.tagName')).toBe('H1');
    await close();
  });

  it('shows its layers outside in, with lots, readings with verdicts, and signatures', async () => {
    await open('/hulls/86-1');
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
    await open('/hulls/86-1');
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
    await open('/hulls/86-1');
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
    await open('/hulls/86-1');
    const href = await page.getByRole('link', { name: 'Build record' }).getAttribute('href');
    const paper = await fetch(`${service.url}${href}`, { headers: await service.signedIn() });
    expect([paper.status, paper.headers.get('content-type')]).toEqual([200, 'application/pdf']);
    expect(
      Buffer.from(await paper.arrayBuffer())
        .subarray(0, 5)
        .toString('latin1'),
    ).toBe('%PDF-');
    await close();
  });

  it('shows what is to come of a hull that was only begun', async () => {
    await open('/hulls/86-6');
    const layers = rowsOf('Laminate of 86-6-H, outside first');
    await layers.first().waitFor();
    expect(await layers.nth(0).innerText()).toMatch(/wet film: not read yet, 3 spots[^]*to come[^]*ends in HP 1/);
    await close();
  });

  it('says so when there is no such hull, and where to look', async () => {
    await open('/hulls/99-9');
    await page.getByText('There is no hull 99-9.').waitFor();
    expect(await page.getByRole('main').getByRole('link', { name: 'list of hulls' }).getAttribute('href')).toBe(
      '/hulls',
    );
    await watched.close();
    // The browser itself notes the 404; nothing else is complained of.
    expect(watched.complaints).toEqual([expect.stringContaining('404')]);
  });
});
