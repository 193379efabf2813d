import { describe, expect, it } from '@jest/globals';
import { readdirSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';

const CODE = /\.(ts|tsx|mts|mjs|cjs|js)$/;
const NOT_OURS = /(^|\/)(node_modules|dist|\.data)(\/|$)|\.probe\.ts$/;

interface SourceFile {
  readonly path: string;
  readonly text: string;
  readonly lines: number;
}

const below = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (NOT_OURS.test(path)) return [];
    return entry.isDirectory() ? below(path) : [path];
  });

const read = (path: string): SourceFile => {
  const text = readFileSync(path, 'utf8');
  return { path, text, lines: text.split('\n').length - 1 };
};

const files = ['apps', 'libs', 'tests']
  .flatMap(below)
  .filter((path) => CODE.test(path))
  .map(read);
const product = files.filter(({ path }) => /^(apps|libs)\/[^/]+\/src\//.test(path));

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? NaN;
const productMedian = median(product.map((file) => file.lines));
const paths = (found: readonly SourceFile[]): string[] => found.map((file) => file.path);

/** Comments and quoted text may say what they like. */
const withoutWords = (text: string): string =>
  text.replace(/'(\\.|[^'\\\n])*'|"(\\.|[^"\\\n])*"/g, "''").replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');

const matching = (among: readonly SourceFile[], pattern: RegExp): string[] =>
  paths(among.filter((file) => pattern.test(withoutWords(file.text))));

describe('the house', () => {
  it('is looked at as a whole', () => {
    expect(product.length).toBeGreaterThan(250);
    expect(files.length).toBeGreaterThan(product.length + 40);
  });

  it('has no file of more than 250 lines: it would hold two ideas', () => {
    expect(files.filter((file) => file.lines > 250).map((file) => `${file.path}: ${file.lines}`)).toEqual([]);
  });

  it(`has small files: the median file of the product has ${productMedian} lines, and may have 45`, () => {
    expect(productMedian).toBeLessThanOrEqual(45);
  });

  it('has no file or folder whose name says nothing', () => {
    const vague = /^(utils?|helpers?|common|misc|stuff|shared|manager)$|(^|[-.])(utils?|helpers?|managers?)([-.]|$)/;
    const names = files.flatMap(({ path }) => path.split('/').map((name) => [name.replace(CODE, ''), path] as const));
    expect(names.filter(([name]) => vague.test(name)).map(([, path]) => path)).toEqual([]);
  });

  it('names its files in kebab-case', () => {
    const kebab = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9-]+)*$/;
    const wrong = files.filter(({ path }) => !path.split('/').every((name) => kebab.test(name)));
    expect(paths(wrong)).toEqual([]);
  });

  it('has no `any`', () => {
    expect(matching(files, /(:|\bas|<|\||&) *any\b(?! *[(:])|\bany\[\]/)).toEqual([]);
  });

  it('silences no rule of the compiler, the linter or the formatter', () => {
    const silenced = new RegExp(
      ['eslint' + '-disable', '@ts' + '-(ignore|nocheck|expect-error)', 'prettier' + '-ignore'].join('|'),
    );
    expect(paths(files.filter((file) => silenced.test(file.text)))).toEqual([]);
  });

  it('has no default export in the product', () => {
    expect(matching(product, /\bexport default\b|\bas default\b/)).toEqual([]);
  });

  it('skips no test, and runs none alone', () => {
    const tests = files.filter((file) => file.path.endsWith('.test.ts'));
    expect(
      matching(tests, /\b(it|test|describe)\.(skip|only|todo|failing)\b|\b(xit|fit|xdescribe|fdescribe)\(/),
    ).toEqual([]);
  });

  it('takes no snapshot', () => {
    expect(matching(files, /\btoMatch(Inline)?Snapshot\s*\(/)).toEqual([]);
  });

  it('names no folder of the machine it was written on', () => {
    const places = [process.cwd(), homedir()].filter((place) => place !== '/');
    const named = new RegExp(`(?<![.\\w-])(${places.join('|')})/`);
    expect(paths(files.filter((file) => named.test(file.text)))).toEqual([]);
  });
});
