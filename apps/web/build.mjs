import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { brotliCompress, gzip } from 'node:zlib';

/** Bundles the web app into `dist`, when that was built of other sources than are there now. */
const web = dirname(fileURLToPath(import.meta.url));
const SOURCES = [
  ...['index.html', 'build.mjs', 'vite.config.ts', 'shell-files.ts', 'public', 'src'],
  ...['../../libs/trade/src', '../../libs/contracts/src/access', '../../package-lock.json'],
];
/** What `dist` was built of: written when it is done, and emptied with it before it is built anew. */
const STAMP = join(web, 'dist/.built-of');

const filesBelow = (path) =>
  statSync(path).isDirectory()
    ? readdirSync(path)
        .sort()
        .flatMap((name) => filesBelow(join(path, name)))
    : [path];

/** A hash of all sources by name and content; what probes the rules of imports is none. */
const hashOfSources = () => {
  const hash = createHash('sha256');
  const files = SOURCES.flatMap((name) => filesBelow(join(web, name))).filter((path) => !path.endsWith('.probe.ts'));
  for (const path of files) hash.update(`${path.slice(web.length)}\n`).update(readFileSync(path));
  return hash.digest('hex');
};

/** What gets smaller; fonts are compressed as they are. */
const SHRINKS = /\.(js|css|svg|wasm)$/;

/** Writes compressed copies beside the files that are fetched by name, for the service to send: tablets have poor Wi-Fi. */
const compress = async () => {
  const assets = join(web, 'dist/assets');
  const copies = readdirSync(assets).flatMap((name) =>
    SHRINKS.test(name) ? [`${name}.br`, `${name}.gz`].map((copy) => [join(assets, name), join(assets, copy)]) : [],
  );
  await Promise.all(
    copies.map(async ([file, copy]) => {
      const bytes = readFileSync(file);
      const small = await promisify(copy.endsWith('.br') ? brotliCompress : gzip)(bytes);
      if (small.length < bytes.length) writeFileSync(copy, small);
    }),
  );
};

const now = hashOfSources();
if (!existsSync(STAMP) || readFileSync(STAMP, 'utf8') !== now) {
  // Whoever bundles it, it is for use: libraries keep their help for developers out.
  process.env.NODE_ENV = 'production';
  const { build } = await import('vite');
  await build({ configFile: join(web, 'vite.config.ts'), logLevel: 'warn' });
  await compress();
  writeFileSync(STAMP, now);
}
