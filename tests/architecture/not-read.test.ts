import { describe, expect, it } from '@jest/globals';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Requests whose failure is no "Not read": what is seen or done instead. */
const NOT_TOLD = {
  '/api/session': 'nobody is taken to be signed in, and the page asks to sign in (browser cases sign-in, troubles)',
  '/health/ready': 'the home page says that the service does not say whether it is ready (browser case failing)',
} as const;

const below = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'));

const found = (texts: readonly string[], each: RegExp): readonly string[] =>
  texts.flatMap((text) => [...text.matchAll(each)].flatMap(([, path]) => path ?? []));

/** Paths of the route table that the web app reads. */
const asked = new Set(found(below('apps/web/src'), /\bask\(\s*'([^']+)'/g));

/** Paths that a test lets fail: in its table they stand before the words of what was not read. */
const failing = found(below('tests/browser'), /[,[]\s*'\*\*(\/[^'?]+)[^']*',\s*'/g).map((path) => path.split('/'));

const isTried = (path: string): boolean => {
  const parts = path.split('/');
  return failing.some(
    (tried) =>
      tried.length === parts.length &&
      parts.every((part, i) => (part.startsWith(':') ? tried[i] !== '**' : part === tried[i])),
  );
};

describe('a request of the web app that fails', () => {
  it('is said on its page: each path has a line in a table of browser tests', () => {
    expect(asked.size).toBeGreaterThan(60);
    expect([...asked].filter((path) => !isTried(path)).sort()).toEqual(Object.keys(NOT_TOLD).sort());
  });

  it('would be missed', () => {
    expect(isTried('/api/lots/:lot')).toBe(true);
    expect(isTried('/api/lots/:lot/nowhere')).toBe(false);
    expect(isTried('/api/nowhere')).toBe(false);
  });
});
