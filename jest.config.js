const shared = {
  rootDir: '.',
  extensionsToTreatAsEsm: ['.ts'],
  transform: { '^.+\\.ts$': '<rootDir>/tests/support/transform.mjs' },
  moduleNameMapper: { '^(\\.{1,2}/.*)\\.js$': '$1' },
  transformIgnorePatterns: ['/node_modules/(?!@hull-record/)'],
  testEnvironment: 'node',
  testEnvironmentOptions: { customExportConditions: ['source', 'node'] },
  modulePathIgnorePatterns: ['<rootDir>/(apps|libs)/.*/dist/', '<rootDir>/.data/'],
};

const suite = (name, extra = {}) => ({
  ...shared,
  displayName: name,
  testMatch: [`<rootDir>/tests/${name}/**/*.test.ts`],
  ...extra,
});

const onDatabase = {
  globalSetup: '<rootDir>/tests/support/postgres/start.mjs',
  globalTeardown: '<rootDir>/tests/support/postgres/stop.mjs',
};

/** Every suite of the project; `npm run jest -- --selectProjects unit` runs one. */
export default {
  testTimeout: 30_000,
  maxWorkers: 2,
  testSequencer: '<rootDir>/tests/support/longest-first.mjs',
  // Modules of a file that ran are never let go of: a worker that holds too many gives its place to a new one.
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
