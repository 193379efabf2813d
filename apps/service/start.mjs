import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

/** Builds what is older than its sources, then starts the service in this process. */
const root = fileURLToPath(new URL('../..', import.meta.url));
const require = createRequire(import.meta.url);
const tsc = require.resolve('typescript/bin/tsc');
const project = fileURLToPath(new URL('tsconfig.json', import.meta.url));

const buildWeb = fileURLToPath(new URL('../web/build.mjs', import.meta.url));

for (const program of [[tsc, '-b', project], [buildWeb]]) {
  const built = spawnSync(process.execPath, program, { cwd: root, stdio: 'inherit' });
  if (built.status !== 0) {
    console.error('Cannot start: the build failed; see above.');
    process.exit(1);
  }
}
await import('./dist/main.js');
