const { register } = require('node:module');
const { pathToFileURL } = require('node:url');
const { default: Runtime } = require('jest-runtime');

const CURRENT = Symbol.for('hull-record: globals of the test file that runs');

register('../typescript-hooks.mjs', pathToFileURL(__filename));
process.setSourceMapsEnabled(true);

/**
 * Loads test files as Node.js loads any module, in the worker's own realm: what one file imported is there for the next,
 * where Jest's own loader would compile and run the whole service again for each of them.
 *
 * Jest still finds, times, runs and reports the tests. What a file leaves behind in a module or in a global the next one
 * would find: tests keep their state in themselves.
 */
module.exports = class NativeRuntime extends Runtime {
  unstable_shouldLoadAsEsm(path) {
    return path.endsWith('.ts') || super.unstable_shouldLoadAsEsm(path);
  }

  async unstable_importModule(path) {
    globalThis[CURRENT] = { ...this.jestGlobals.cjsGlobals(path), realm: this._environment.global };
    // Node.js maps stacks itself, as it compiled the modules; a formatter in place would keep it from that.
    Error.prepareStackTrace = undefined;
    await import(pathToFileURL(path).href);
  }

  teardown() {
    this.restoreAllMocks();
    super.teardown();
  }
};
