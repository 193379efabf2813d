import { join } from 'node:path';
import { defineConfig } from 'vite';

const LIBS = join(import.meta.dirname, '../../libs');

/** The web app is bundled from sources, those of the libraries too: the rules it judges with are the service's own. */
export default defineConfig({
  root: import.meta.dirname,
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
      // Libraries mark what runs in browsers for servers that render pages; here all of it does.
      onLog: (level, log, tell) => (log.code === 'MODULE_LEVEL_DIRECTIVE' ? undefined : tell(level, log)),
    },
  },
});
