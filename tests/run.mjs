import { Buffer } from 'node:buffer';
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * What `npm test` runs, in order; it ends at the first step that fails. `--check` leaves out the tests themselves.
 *
 * The last line is always `N passed, N failed`: tests, or the one step before them that failed.
 */
const root = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'hull-record-results-'));
const results = join(folder, 'results.json');

/** The program of a package, as its package.json names it. */
const programOf = (name, program = name) => {
  const packageFile = join(root, 'node_modules', name, 'package.json');
  const { bin } = createRequire(import.meta.url)(packageFile);
  return join(packageFile, '..', typeof bin === 'string' ? bin : bin[program]);
};

const tsc = () => programOf('typescript', 'tsc');
const jest = () => ['--no-warnings', programOf('jest'), '--json', '--outputFile', results];
const cruise = () => [programOf('dependency-cruiser', 'depcruise'), '--config', '.dependency-cruiser.cjs'];

const BUILD = [
  ['build', () => [tsc(), '-b']],
  ['web', () => ['apps/web/build.mjs']],
];
/** Run side by side, one lane beside the other: linting takes as long as the others together. */
const CHECKS = [
  [['lint', () => [programOf('eslint'), '.', '--max-warnings', '0']]],
  [
    ['format', () => [programOf('prettier'), '--check', '.']],
    ['types', () => [tsc(), '-p', 'tests']],
    ['imports', () => [...cruise(), 'apps', 'libs', 'tests']],
  ],
];
const TESTS = [['tests', jest]];

/** Without a locale, as a bare container or a service manager starts programs. */
const bare = Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^(LANG|LANGUAGE|LC_\w+)$/.test(name)));

const saysHow = (name, status, began) =>
  console.log(
    `== ${name}: ${status === 0 ? 'passed' : 'FAILED'} in ${((performance.now() - began) / 1000).toFixed(1)} s`,
  );

const run = ([name, command]) => {
  console.log(`\n== ${name}`);
  const began = performance.now();
  const { status } = spawnSync(process.execPath, command(), { cwd: root, env: bare, stdio: 'inherit' });
  saysHow(name, status, began);
  return status === 0;
};

/** Runs a step beside others: what it prints is kept until it ends, so that two do not talk at once. */
const runBeside = ([name, command]) =>
  new Promise((ended) => {
    const began = performance.now();
    const step = spawn(process.execPath, command(), { cwd: root, env: bare, stdio: ['ignore', 'pipe', 'pipe'] });
    const said = [];
    for (const stream of [step.stdout, step.stderr]) stream.on('data', (chunk) => said.push(chunk));
    step.on('close', (status) => {
      console.log(`\n== ${name}\n${Buffer.concat(said).toString('utf8').trimEnd()}`);
      saysHow(name, status, began);
      ended(status === 0);
    });
  });

/** The steps of a lane one after another, until one fails. */
const runLane = async (lane) => {
  for (const step of lane) if (!(await runBeside(step))) return false;
  return true;
};

/** A file of tests that could not even be loaded counts as one that failed. */
const count = (passed) => {
  if (!existsSync(results)) return { passed: 0, failed: passed ? 0 : 1 };
  const { numPassedTests, numFailedTests, numRuntimeErrorTestSuites } = JSON.parse(readFileSync(results, 'utf8'));
  const failed = numFailedTests + numRuntimeErrorTestSuites;
  return { passed: numPassedTests, failed: passed ? failed : Math.max(failed, 1) };
};

const checkOnly = process.argv.includes('--check');
const checked = BUILD.every(run) && (await Promise.all(CHECKS.map(runLane))).every(Boolean);
const passed = checked && (checkOnly || TESTS.every(run));
const counted = count(passed);
rmSync(folder, { recursive: true });
if (!checkOnly) console.log(`\n${counted.passed} passed, ${counted.failed} failed`);
process.exitCode = passed && counted.failed === 0 ? 0 : 1;
