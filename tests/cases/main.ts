import { readFile } from 'node:fs/promises';
import { z } from 'zod';
import { CaseFile } from './case.js';
import { CHECKS } from './checks/index.js';
import { runCase } from './run-case.js';

const list = (): void => {
  for (const [name, { topic, says, input }] of Object.entries(CHECKS)) {
    const { $schema: _schema, ...schema } = z.toJSONSchema(input, { io: 'input', unrepresentable: 'any' });
    console.log(`${name} (${topic}): ${says}\n  ${JSON.stringify(schema)}`);
  }
};

const run = async (file: string): Promise<number> => {
  const cases = CaseFile.parse(JSON.parse(await readFile(file, 'utf8')));
  const outcomes = cases.map(runCase);
  for (const { id, check, passed, why } of outcomes)
    console.log(`${passed ? 'passed' : 'FAILED'} ${id} ${check}${why === undefined ? '' : `: ${why}`}`);
  const failed = outcomes.filter(({ passed }) => !passed).length;
  console.log(`${outcomes.length - failed} passed, ${failed} failed`);
  return failed;
};

const [argument] = process.argv.slice(2);
if (argument === '--list') list();
else if (argument === undefined) {
  console.error('Name a file of cases, or --list for the checks there are.');
  process.exitCode = 2;
} else {
  try {
    process.exitCode = (await run(argument)) === 0 ? 0 : 1;
  } catch (error) {
    console.error(`${argument} cannot be read as cases: ${error instanceof Error ? error.message : String(error)}`);
    process.exitCode = 2;
  }
}
