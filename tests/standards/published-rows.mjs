import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const HERE = dirname(fileURLToPath(import.meta.url));

/**
 * What is wrong between the list of published rows and the tests that ran: a row without its test, a row whose test
 * did not pass, a row that names neither test nor reason.
 *
 * @param {readonly { row: string, topic: string, code: string, fact: string, source: string, tests?: string[], why?: string }[]} rows
 * @param {readonly { file: string, name: string, passed: boolean }[]} ran file is the name of the test file without its ending
 */
export const rowFaults = (rows, ran) => [
  ...rows.flatMap((row, i) =>
    rows.findIndex((other) => other.row === row.row) < i ? [`${row.row}: stands twice on the list`] : [],
  ),
  ...rows.flatMap((row) => faultsOf(row, ran)),
];

const faultsOf = ({ row, topic, code, fact, source, tests, why }, ran) => {
  if (![row, topic, code, fact, source].every(Boolean)) return [`${row}: names no topic, code, fact or source`];
  if ((tests === undefined) === (why === undefined)) return [`${row}: names either its tests or why there is none`];
  return (tests ?? []).flatMap((name) => {
    const found = ran.filter((test) => test.file === topic && test.name.includes(name));
    if (found.length === 0) return [`${row} (${fact}): no test of ${topic} is named "${name}"`];
    return found.every(({ passed }) => passed) ? [] : [`${row} (${fact}): "${name}" did not pass`];
  });
};

/** Every row of the committed list. */
export const readRows = () =>
  readdirSync(join(HERE, 'rows'))
    .sort()
    .flatMap((file) => JSON.parse(readFileSync(join(HERE, 'rows', file), 'utf8')));

/**
 * Compares the list of published rows with the tests that ran, and fails the run when they differ. Of a run of some of
 * the standards alone it says that it cannot.
 */
export default class PublishedRows {
  onRunComplete(_contexts, { testResults }) {
    const ours = testResults.filter(({ testFilePath }) => dirname(testFilePath) === HERE);
    if (ours.length === 0) return;
    const files = readdirSync(HERE).filter((name) => name.endsWith('.test.ts'));
    const whole = files.every((name) => ours.some(({ testFilePath }) => relative(HERE, testFilePath) === name));
    const skipped = ours.some(({ skipped, numPendingTests }) => skipped || numPendingTests > 0);
    if (!whole || skipped) {
      console.log('The list of published rows is compared when all of the standards run.');
      return;
    }
    const rows = readRows();
    this.faults = rowFaults(rows, ours.flatMap(testsOf));
    const computed = rows.filter(({ tests }) => tests !== undefined).length;
    if (this.faults.length > 0) console.error(`Published rows:\n${this.faults.join('\n')}`);
    else console.log(`${rows.length} published rows: ${computed} have their tests, the others say why there is none.`);
  }

  getLastError() {
    return this.faults?.length > 0 ? new Error('Published rows and the tests that ran differ.') : undefined;
  }
}

const testsOf = ({ testFilePath, testResults }) =>
  testResults.map(({ fullName, status }) => ({
    file: relative(HERE, testFilePath).replace(/\.test\.ts$/, ''),
    name: fullName,
    passed: status === 'passed',
  }));
