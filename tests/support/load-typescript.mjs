import { register } from 'node:module';

/** `node --conditions=source --import ./tests/support/load-typescript.mjs file.ts` runs TypeScript without a build. */
register('./typescript-hooks.mjs', import.meta.url);
