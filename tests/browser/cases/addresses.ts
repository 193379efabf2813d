import { describe, expect, it } from '@jest/globals';
import { Shop } from '../../support/shop.js';
import { close, open, page, rowsOf, service } from '../stage.js';

describe('an address', () => {
  it.each([
    ['/#/hulls/86-1', '/hulls/86-1', 'Hull molding 86-1-H'],
    ['/#/lots/R-BAD?least=20', '/lots/R-BAD?least=20', 'Hulls that hold it'],
    ['/l/lot/R-BAD', '/lots/R-BAD', 'Hulls that hold it'],
    ['/l/hull/86-1', '/hulls/86-1', 'Hull molding 86-1-H'],
  ])('%s leads to %s', async (address, to, heading) => {
    await open(address);
    await page.getByRole('heading', { name: heading }).waitFor();
    expect(page.url()).toBe(`${service.url}${to}`);
    await close();
  });

  it('after a # leads there also while a page is open', async () => {
    await open('/hulls');
    await rowsOf('Hulls, the newest first').first().waitFor();
    await page.evaluate("location.hash = '#/lots/R-BAD'");
    await page.getByRole('heading', { name: 'Lot R-BAD' }).waitFor();
    await close();
  });

  it('holds any number that a hull can have', async () => {
    const number = '86/7 Ü?#%';
    await new Shop(service).startHull(number);
    await open('/hulls');
    await page.getByRole('link', { name: number }).click();
    await page.getByRole('heading', { name: `Hull molding ${number}-H` }).waitFor();
    expect(new URL(page.url()).pathname).toBe(`/hulls/${encodeURIComponent(number)}`);
    await page.reload();
    await page.getByRole('heading', { name: `Hull molding ${number}-H` }).waitFor();
    await close();
  });

  it('keeps what was asked when one goes back', async () => {
    await open('/lots?search=R-');
    await page.getByRole('link', { name: 'R-BAD' }).click();
    await page.getByRole('heading', { name: 'Lot R-BAD' }).waitFor();
    await page.goBack();
    await rowsOf('Lots, the newest first').first().waitFor();
    expect(await page.getByLabel("Part of a code or supplier's lot").inputValue()).toBe('R-');
    await close();
  });

  it('is found from any page, and reading begins at its heading', async () => {
    await open('/settings');
    await page.getByRole('searchbox').fill('R-BAD');
    await page.keyboard.press('Enter');
    await page.getByRole('link', { name: 'R-BAD' }).waitFor();
    expect(await page.evaluate('document.activeElement.innerText')).toBe('Search');
    await close();
  });
});

describe('the service', () => {
  const headersOf = async (path: string): Promise<readonly (string | number | null)[]> => {
    const { status, headers } = await fetch(`${service.url}${path}`, { headers: { accept: 'text/html,*/*' } });
    return [status, headers.get('content-type')?.split(';')[0] ?? null, headers.get('cache-control')];
  };

  it('gives its page at every address of one, to be asked for anew, with the time zone of the plant', async () => {
    for (const path of ['/', '/index.html', '/lots/R-BAD', '/hulls/86-1'])
      expect([path, await headersOf(path)]).toEqual([path, [200, 'text/html', 'no-cache']]);
    const text = await (await fetch(`${service.url}/hulls`)).text();
    expect(text).toContain('<meta name="plant-time-zone" content="America/New_York" />');
  });

  it('sends what is built compressed to a browser that takes it, as it is to one that does not, and answers never', async () => {
    const asset = /\/assets\/index-[\w-]+\.js/.exec(await (await fetch(service.url)).text())?.[0] ?? '';
    const sent = async (path: string, encoding: string) => {
      const { headers } = await fetch(`${service.url}${path}`, { headers: { 'accept-encoding': encoding } });
      return [headers.get('content-encoding'), headers.get('vary'), headers.get('content-type')?.split(';')[0]];
    };
    expect(await sent(asset, 'gzip, deflate, br')).toEqual(['br', 'Accept-Encoding', 'text/javascript']);
    expect(await sent(asset, 'gzip')).toEqual(['gzip', 'Accept-Encoding', 'text/javascript']);
    expect(await sent(asset, 'identity')).toEqual([null, 'Accept-Encoding', 'text/javascript']);
    expect((await sent('/api/session', 'gzip, deflate, br'))[0]).toBe(null);
  });

  it('gives what is named after its content to be kept, and nothing in place of what is not there', async () => {
    const text = await (await fetch(service.url)).text();
    const asset = /\/assets\/index-[\w-]+\.js/.exec(text)?.[0] ?? '';
    expect((await headersOf(asset))[2]).toBe('public, max-age=31536000, immutable');
    for (const path of ['/assets/index-gone.js', '/api/nothing', '/health/nothing'])
      expect([path, (await headersOf(path))[0]]).toEqual([path, 404]);
  });
});
