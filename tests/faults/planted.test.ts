import { describe, expect, it } from '@jest/globals';
import { spawnSync } from 'node:child_process';
import { PLANTED } from './planted.mjs';

const JEST = 'node_modules/jest/bin/jest.js';

/** Runs one test file in a process of its own, with a fault planted or with none. */
const run = (test: string, fault: string): { status: number | null; output: string } => {
  const flags = ['--no-warnings', JEST];
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

/** Those planted in every run, one of each kind of test that must notice; FAULTS=all plants all of them. */
const ALWAYS = [
  'the heel of a tank is dropped',
  'a hook-up entered late changes nothing that was sprayed',
  'what is said late of a lot finds nothing that was used meanwhile',
  'a fact that was corrected still counts',
  'the weakest basis on the way is forgotten',
];

const chosen = Object.entries(PLANTED).filter(([fault]) => process.env['FAULTS'] === 'all' || ALWAYS.includes(fault));

describe('a planted fault', () => {
  it('is one of the list', () => {
    expect(ALWAYS.filter((fault) => !(fault in PLANTED))).toEqual([]);
  });

  it.each(chosen)(
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
