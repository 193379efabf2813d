import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { judgePlant, STUDIED, type Outcome } from './judge-plant.js';
import { SIZE } from './lots.js';
import { livePlant } from './plant.js';
import { holdsOf, tables, type Report } from './report.js';
import { SCENARIOS, type Scenario } from './scenarios.js';
import { pooled, summarise } from './summary.js';

/**
 * The simulation study of the attribution: `npm run study -- --plants 200 --innocent 500 --seed 700000 --json FILE`.
 *
 * `--plants 0` tries those without alone; `--worlds 0` leaves out the shuffles, on which no verdict hangs.
 * `--minutes M` ends it after the turn in which they are over, however many plants there were: time alone decides.
 * `--plants` of each scenario with a bad lot, `--innocent` (a multiple of it) of each without; what is stated beforehand is in
 * libs/statistics/docs/attribution-study.md. Plants of all scenarios take turns, and the file is written after each turn.
 */
const { values } = parseArgs({
  options: {
    plants: { type: 'string', default: '200' },
    innocent: { type: 'string' },
    seed: { type: 'string', default: '700000' },
    json: { type: 'string' },
    worlds: { type: 'string', default: '999' },
    minutes: { type: 'string', default: 'Infinity' },
  },
});
const withBad = Number(values.plants);
const withoutBad = Number(values.innocent ?? values.plants);
const seed = Number(values.seed);
const outcomes: Outcome[][] = SCENARIOS.map(() => []);

const reportOf = (): Report => {
  const summaries = SCENARIOS.map((scenario, i) => summarise(scenario, outcomes[i] as Outcome[]));
  const all = pooled(summaries);
  const plants = { withoutBad: outcomes[0]?.length ?? 0, withBad: outcomes.at(-1)?.length ?? 0 };
  return {
    seed,
    plants,
    settings: { ...STUDIED, worlds: Number(values.worlds) },
    size: SIZE,
    summaries,
    pooled: all,
    holds: holdsOf(summaries, all),
  };
};

const turns = withBad === 0 ? withoutBad : withBad;
/** Plants of a scenario that are lived in a turn, so that all come to their numbers together. */
const eachTurn = ({ badLots }: Scenario): number =>
  badLots > 0 ? Math.min(1, withBad) : Math.max(1, Math.round(withoutBad / turns));
const settings = { ...STUDIED, worlds: Number(values.worlds) };
const until = performance.now() + 60_000 * Number(values.minutes);
for (let i = 1; i <= turns && performance.now() < until; i += 1) {
  SCENARIOS.forEach((scenario, place) => {
    const plants = eachTurn(scenario);
    for (let k = plants * (i - 1) + 1; k <= plants * i; k += 1)
      outcomes[place]?.push(judgePlant(livePlant(scenario, seed + 10_000 * place + k), scenario, settings));
  });
  if (values.json) writeFileSync(values.json, `${JSON.stringify(reportOf(), null, 2)}\n`);
  if (i % 20 === 0) console.error(`${i} of ${turns}`);
}
console.log(tables(reportOf()));
