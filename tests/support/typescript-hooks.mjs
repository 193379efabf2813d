import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { transform } from '@swc/core';
import { applyFault } from '../faults/planted.mjs';

const GLOBALS = new URL('native/globals.mjs', import.meta.url).href;

/** A source file imports its neighbour under the name it will have when built; here it still ends in .ts or .tsx. */
const asSource = (specifier, parentURL) => {
  if (!/\.tsx?$/.test(parentURL ?? '') || !/^\..*\.js$/.test(specifier)) return specifier;
  const [plain, withElements] = ['.ts', '.tsx'].map((ending) => specifier.replace(/\.js$/, ending));
  return existsSync(new URL(plain, parentURL)) || !existsSync(new URL(withElements, parentURL)) ? plain : withElements;
};

/** Packages of the project resolve to their sources; the globals of Jest to those of the test file that runs. */
export const resolve = async (specifier, context, next) => {
  if (specifier === '@jest/globals') return { url: GLOBALS, shortCircuit: true };
  return next(asSource(specifier, context.parentURL), { ...context, conditions: [...context.conditions, 'source'] });
};

/** Compiles a TypeScript module with the project's settings, with the fault that FAULT names planted in it. */
export const load = async (url, context, next) => {
  if (!/\.tsx?$/.test(url)) return next(url, context);
  const filename = fileURLToPath(url);
  const source = applyFault(await readFile(filename, 'utf8'), filename);
  const { code } = await transform(source, { filename });
  return { format: 'module', source: code, shortCircuit: true };
};
