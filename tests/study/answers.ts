import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { answerOf } from '../../apps/service/src/cases/answer/answer-of.js';
import { caseOf, caseSettings } from './case-of-plant.js';
import { livePlant } from './plant.js';
import { SCENARIOS, type Scenario } from './scenarios.js';

/**
 * What the look of the service answers for plants from seeds nobody has seen: `npm run study:answers -- --plants 20`.
 *
 * `--table FILE` is written after each plant. Each plant with one bad lot three ways: as it is, with the hulls of the bad lot left out of the case, and a plant of the
 * same seed without any bad lot.
 */
const { values } = parseArgs({
  options: {
    plants: { type: 'string', default: '20' },
    seed: { type: 'string', default: '900000' },
    table: { type: 'string' },
  },
});
const scenarioOf = (name: string): Scenario => SCENARIOS.find((each) => each.name === name) as Scenario;
const settings = caseSettings();
const WORDS = ['strong', 'suggestive', 'the data cannot say which', 'no lot stands out'] as const;

interface Answered {
  readonly seed: number;
  readonly planted: string;
  readonly verdict: string;
  readonly first: string;
  readonly holds: boolean;
  readonly removed: string;
  readonly innocent: string;
}

const answers: Answered[] = [];
for (let i = 1; i <= Number(values.plants); i += 1) {
  const seed = Number(values.seed) + i;
  const plant = livePlant(scenarioOf('one bad lot'), seed);
  const [planted] = plant.bad as [string];
  const { verdict, classes } = await answerOf(settings, caseOf(plant));
  const removed = await answerOf(settings, caseOf(plant, planted));
  const innocent = await answerOf(settings, caseOf(livePlant(scenarioOf('no bad lot'), seed)));
  const [first] = classes;
  answers.push({
    ...{ seed, planted, verdict, first: first?.named ?? '', holds: first?.lots.includes(planted) ?? false },
    ...{ removed: removed.verdict, innocent: innocent.verdict },
  });
  if (values.table) writeFileSync(values.table, `${tableOf()}\n`);
  console.error(`${i} of ${values.plants}`);
}

console.log(tableOf());

function often(of: (answer: Answered) => string): string {
  return WORDS.map((word) => answers.filter((answer) => of(answer) === word).length).join(' | ');
}

function tableOf(): string {
  return [
    `| of ${answers.length} plants | ${WORDS.join(' | ')} |`,
    '| --- | --- | --- | --- | --- |',
    `| with one bad lot | ${often(({ verdict }) => verdict)} |`,
    `| its hulls left out of the case | ${often(({ removed }) => removed)} |`,
    `| without any bad lot | ${often(({ innocent }) => innocent)} |`,
    '',
    `The bad lot is first, alone or with its inseparable ones, in ${answers.filter(({ holds }) => holds).length} of ${answers.length}.`,
    '',
    '| seed | planted | verdict | first | its hulls left out | without any |',
    '| --- | --- | --- | --- | --- | --- |',
    ...answers.map(
      (own) =>
        `| ${own.seed} | ${own.planted} | ${own.verdict} | ${own.first}${own.holds ? '' : ' (another)'} | ${own.removed} | ${own.innocent} |`,
    ),
  ].join('\n');
}
