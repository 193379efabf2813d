import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

/** Compiles what is older than its sources, then verifies: the whole database, or one file. */
const require = createRequire(import.meta.url);
const project = fileURLToPath(new URL('tsconfig.json', import.meta.url));
const built = spawnSync(process.execPath, [require.resolve('typescript/bin/tsc'), '-b', project], { stdio: 'inherit' });
if (built.status !== 0) {
  process.stderr.write('Cannot verify: the build failed; see above.\n');
  process.exit(2);
}
await import('./dist/verify-main.js');
