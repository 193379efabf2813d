import { join } from 'node:path';
import { defineConfig } from 'vite';
import { shellFiles } from './shell-files.js';

const LIBS = join(import.meta.dirname, '../../libs');

/** The web app is bundled from sources, those of the libraries too: the rules it judges with are the service's own. */
export default defineConfig({
  root: import.meta.dirname,
  plugins: [shellFiles(join(import.meta.dirname, 'public'))],
  // By name and not by the condition `source`: packages of others have that one too, and mean other things by it.
  resolve: {
    alias: [
      { find: /^@hull-record\/(\w+)$/, replacement: `${LIBS}/$1/src/index.ts` },
      // The table of who may do what stands apart from the schemas, which would weigh more than the rest of the app.
      { find: '@hull-record/contracts/who-may', replacement: `${LIBS}/contracts/src/access/who-may.ts` },
    ],
  },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    // The security policy lets fonts come from the service alone, not from data: addresses.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
    manifest: true,
    rolldownOptions: {
      // The worker is known by its address for ever; what it keeps is named in it.
      input: {
        index: join(import.meta.dirname, 'index.html'),
        'service-worker': join(import.meta.dirname, 'src/worker/service-worker.ts'),
      },
      output: {
        entryFileNames: ({ name }) => (name === 'service-worker' ? '[name].js' : 'assets/[name]-[hash].js'),
      },
      // Libraries mark what runs in browsers for servers that render pages; here all of it does.
      onLog: (level, log, tell) => (log.code === 'MODULE_LEVEL_DIRECTIVE' ? undefined : tell(level, log)),
    },
  },
});
