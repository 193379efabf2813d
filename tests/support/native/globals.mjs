const CURRENT = Symbol.for('hull-record: globals of the test file that runs');

/** Modules stay from one test file to the next, and each file has a set of globals of its own: these pass on to it. */
const passedOn = (name, own = {}) =>
  new Proxy(() => undefined, {
    apply: (_target, _self, given) => globalThis[CURRENT][name](...given),
    get: (_target, key) => own[key] ?? globalThis[CURRENT][name][key],
  });

/** Jest runs in a realm of its own, and knows what is any string by the String of that realm. */
const any = (type) => {
  const { expect, realm } = globalThis[CURRENT];
  return expect.any(type === globalThis[type.name] ? (realm[type.name] ?? type) : type);
};

export const [afterAll, afterEach, beforeAll, beforeEach] = ['afterAll', 'afterEach', 'beforeAll', 'beforeEach'].map(
  (name) => passedOn(name),
);
export const [describe, it, jest, test] = ['describe', 'it', 'jest', 'test'].map((name) => passedOn(name));
export const expect = passedOn('expect', { any });
