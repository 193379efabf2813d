import { describe, expect, it } from '@jest/globals';
import { spawnSync } from 'node:child_process';
import { PLANTED } from './planted.mjs';

const JEST = 'node_modules/jest/bin/jest.js';

/** Runs one test file in a process of its own, with a fault planted or with none. */
const run = (test: string, fault: string): { status: number | null; output: string } => {
  const flags = ['--experimental-vm-modules', '--no-warnings', JEST];
  const choice = [
    '--selectProjects',
    'integration',
    '--testPathPatterns',
    `integration/${test}.test`,
    '--maxWorkers',
    '1',
  ];
  const { status, stdout, stderr } = spawnSync(process.execPath, [...flags, ...choice], {
    env: { ...process.env, FAULT: fault },
    encoding: 'utf8',
  });
  return { status, output: `${stdout}${stderr}` };
};

describe('a planted fault', () => {
  it.each(Object.entries(PLANTED))(
    'makes a test fail: %s',
    (fault, { test }) => {
      const { status, output } = run(test, fault);
      expect(status).toBe(1);
      expect(output).not.toContain('Planted fault:');
      // By what it expected, or by a week of the shop that came to grief.
      expect(output).toMatch(/expect\(received\)|SEED=-?\d+ WEEK=/);
    },
    120_000,
  );
});
