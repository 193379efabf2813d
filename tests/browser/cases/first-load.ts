import { describe, expect, it } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { WEB_DIR } from '../../support/browser.js';
import { close, open, page } from '../stage.js';

interface Chunk {
  readonly file: string;
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
}

const DIST = join(WEB_DIR, 'dist');
/** Compressed JavaScript before the first page shows, kB (1000 bytes, gzip). */
const BUDGET_KB = 220;

const manifest = (): Readonly<Record<string, Chunk>> =>
  JSON.parse(readFileSync(join(DIST, '.vite/manifest.json'), 'utf8')) as Record<string, Chunk>;

/** The chunks that some need, themselves among them; what is fetched later is left out. */
const needed = (names: readonly string[], all = manifest(), known = new Set<string>()): ReadonlySet<string> => {
  for (const name of names.filter((each) => !known.has(each))) {
    known.add(name);
    needed(all[name]?.imports ?? [], all, known);
  }
  return known;
};

const kilobytes = (names: readonly string[]): number =>
  [...needed(names)].reduce((sum, name) => {
    const file = manifest()[name]?.file ?? '';
    return sum + gzipSync(readFileSync(join(DIST, file))).length / 1000;
  }, 0);

describe('the first load', () => {
  it(`is of at most ${BUDGET_KB} kB of compressed JavaScript`, () => {
    expect(kilobytes(['index.html'])).toBeGreaterThan(50);
    expect(kilobytes(['index.html'])).toBeLessThanOrEqual(BUDGET_KB);
  });

  it('is that also with the texts of a language and any page', () => {
    const later = manifest()['index.html']?.dynamicImports ?? [];
    const pages = later.filter((name) => name.endsWith('-page.tsx'));
    const texts = later.filter((name) => name.startsWith('src/language/'));
    expect(pages.length).toBeGreaterThanOrEqual(9);
    expect(texts).toHaveLength(2);
    // One language is fetched, as is held below: each with each page, and not both of them.
    const over = pages.flatMap((name) =>
      texts
        .map((language) => [name, language, kilobytes(['index.html', language, name])] as const)
        .filter(([, , weight]) => weight > BUDGET_KB),
    );
    expect(over).toEqual([]);
  });

  it('of the station is so much on the way, too', async () => {
    await open('/station', {}, 'LAM-1');
    await page.getByRole('link', { name: 'Enter a layer' }).waitFor();
    const sent = await page.evaluate<readonly { name: string; bytes: number }[]>(
      'performance.getEntriesByType("resource").filter(({ name }) => name.endsWith(".js")).map(({ name, encodedBodySize }) => ({ name, bytes: encodedBodySize }))',
    );
    const kB = sent.reduce((sum, { bytes }) => sum + bytes / 1000, 0);
    expect(sent.length).toBeGreaterThan(3);
    expect(kB).toBeGreaterThan(50);
    expect(kB).toBeLessThanOrEqual(BUDGET_KB);
    await close();
  });

  it('fetches one page and one language', async () => {
    const fetched = new Set<string>();
    await open('/settings');
    page.on('request', (request) => fetched.add(new URL(request.url()).pathname));
    await page.reload();
    await page.getByRole('heading', { name: 'Units' }).waitFor();
    const scripts = [...fetched].filter((path) => path.endsWith('.js'));
    expect(scripts.filter((path) => path.includes('-page-'))).toEqual([expect.stringContaining('settings-page')]);
    expect(scripts.filter((path) => /\/(en|es)-/.test(path))).toEqual([expect.stringContaining('/en-')]);
    await close();
  });
});
