export const shared = {
  rootDir: '.',
  runtime: '<rootDir>/tests/support/native/runtime.cjs',
  transform: {},
  testEnvironment: 'node',
  modulePathIgnorePatterns: ['<rootDir>/(apps|libs)/.*/dist/', '<rootDir>/.data/'],
};

const suite = (name, extra = {}) => ({
  ...shared,
  displayName: name,
  testMatch: [`<rootDir>/tests/${name}/**/*.test.ts`],
  ...extra,
});

export const onDatabase = {
  globalSetup: '<rootDir>/tests/support/postgres/start.mjs',
  globalTeardown: '<rootDir>/tests/support/postgres/stop.mjs',
};

/** Every suite of the project; `npm run jest -- --selectProjects unit` runs one. */
export default {
  testTimeout: 30_000,
  maxWorkers: 2,
  testSequencer: '<rootDir>/tests/support/longest-first.mjs',
  workerIdleMemoryLimit: '1200MB',
  reporters: ['default', '<rootDir>/tests/standards/published-rows.mjs'],
  projects: [
    suite('unit'),
    suite('standards'),
    suite('architecture', onDatabase),
    suite('integration', onDatabase),
    suite('browser', onDatabase),
    suite('faults', onDatabase),
  ],
};
