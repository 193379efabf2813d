import { onDatabase, shared } from '../../jest.config.js';

/** The run of every page in every size, language and theme: `npm run grid`. It takes too long for the tests of each day. */
export default {
  ...shared,
  ...onDatabase,
  rootDir: '../..',
  displayName: 'grid',
  testMatch: ['<rootDir>/tests/grid/**/*.test.ts'],
  testTimeout: 60_000,
  maxWorkers: 2,
};
