import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import { PROBES, removeProbes, writeProbes } from './probes.js';

interface Violation {
  readonly from: string;
  readonly to: string;
  readonly rule: { readonly name: string };
}

const CONFIG = '.dependency-cruiser.cjs';
const PROGRAM = 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs';

/** Runs the checker as `npm run check:imports` does, once over the tree with all probes in it. */
const cruise = (): { violations: Violation[]; modules: string[] } => {
  const args = [PROGRAM, '--config', CONFIG, '--output-type', 'json', 'apps', 'libs', 'tests'];
  const { stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8', maxBuffer: 2 ** 28 });
  if (!stdout.startsWith('{')) throw new Error(`The checker did not run: ${stderr || stdout}`);
  const found = JSON.parse(stdout) as { summary: { violations: Violation[] }; modules: { source: string }[] };
  return { violations: found.summary.violations, modules: found.modules.map((module) => module.source) };
};

const ruleNames = (): string[] => {
  const config = createRequire(resolve(CONFIG))(resolve(CONFIG)) as { forbidden: { name: string }[] };
  return config.forbidden.map((rule) => rule.name);
};

const isProbe = (path: string): boolean => path.endsWith('.probe.ts');

let found: ReturnType<typeof cruise>;
beforeAll(() => {
  removeProbes();
  writeProbes();
  try {
    found = cruise();
  } finally {
    removeProbes();
  }
});
afterAll(removeProbes);

describe('imports point one way', () => {
  it.each(PROBES)('the rule $rule fires on $path, and no other rule does', ({ rule, path }) => {
    const fired = found.violations.filter((violation) => violation.from === path).map(({ rule: { name } }) => name);
    expect([...new Set(fired)]).toEqual([rule]);
  });

  it('has a probe for every rule, so that none can stop firing unnoticed', () => {
    expect([...new Set(PROBES.map((probe) => probe.rule))].sort()).toEqual(ruleNames().sort());
  });

  it('holds in the whole tree as it is', () => {
    const real = found.violations.filter((violation) => !isProbe(violation.from));
    expect(real.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`)).toEqual([]);
  });

  it('looks at the sources of every package, and at nothing that was built', () => {
    const seen = (start: string): number => found.modules.filter((path) => path.startsWith(start)).length;
    for (const name of ['trade', 'genealogy', 'statistics', 'evidence', 'contracts', 'paper']) {
      expect(seen(`libs/${name}/src/`)).toBeGreaterThan(1);
      expect(seen(`libs/${name}/dist/`)).toBe(0);
    }
    expect(seen('apps/service/src/')).toBeGreaterThan(100);
    expect(seen('apps/service/dist/')).toBe(0);
  });
});
