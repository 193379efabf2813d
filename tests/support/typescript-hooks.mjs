import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { transform } from '@swc/core';

/** A source file imports its neighbour under the name it will have when built; here it still ends in .ts. */
export const resolve = async (specifier, context, next) => {
  const fromTypeScript = context.parentURL?.endsWith('.ts') && specifier.startsWith('.');
  return next(fromTypeScript ? specifier.replace(/\.js$/, '.ts') : specifier, context);
};

/** Compiles a .ts module with the project's settings and leaves everything else alone. */
export const load = async (url, context, next) => {
  if (!url.endsWith('.ts')) return next(url, context);
  const filename = fileURLToPath(url);
  const { code } = await transform(await readFile(filename, 'utf8'), { filename });
  return { format: 'module', source: code, shortCircuit: true };
};
