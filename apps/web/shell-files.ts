import { createHash } from 'node:crypto';
import { readdirSync } from 'node:fs';
import type { Plugin } from 'vite';

/** Not part of the app: a licence to be read, and the worker itself. */
const LEFT_OUT = /licence|service-worker|\.map$/;

/** Writes into the worker which files the app consists of, and a version that changes with any of them. */
export const shellFiles = (publicDir: string): Plugin => ({
  name: 'shell-files',
  generateBundle: {
    order: 'post',
    handler: (_, bundle) => {
      const files = ['index.html', ...Object.keys(bundle), ...readdirSync(publicDir)]
        .filter((file) => !LEFT_OUT.test(file) && !file.startsWith('.vite'))
        .map((file) => `/${file}`);
      const names = [...new Set(files)].sort();
      const page = bundle['index.html'];
      const hash = createHash('sha256').update(names.join('\n'));
      if (page?.type === 'asset') hash.update(page.source);
      const worker = bundle['service-worker.js'];
      if (worker?.type !== 'chunk') throw new Error('The worker is not among what was built.');
      const before = worker.code;
      worker.code = before
        .replace('__SHELL_FILES__', names.join('\\n'))
        .replace('__SHELL_VERSION__', `shell-${hash.digest('hex').slice(0, 16)}`);
      if (/__SHELL/.test(worker.code) || worker.code === before)
        throw new Error('The worker has no place for its files.');
    },
  },
});
