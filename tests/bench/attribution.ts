import {
  attribute,
  candidatesOf,
  inseparable,
  riskCells,
  screenClasses,
  seeded,
  SETTINGS,
  smallestByChance,
  weigh,
} from '@hull-record/statistics';
import { generatedCase } from './attribution-data.js';

/**
 * Measures the attribution on generated cases: `npm run bench:attribution -- 200000 15000 400` (hulls, lots, claims).
 * Machines differ; read the ratios.
 */
const [hulls = 200_000, lots = 15_000, claims = 400] = process.argv.slice(2).map(Number);

const timed = <T>(what: string, work: () => T): T => {
  const from = performance.now();
  const answer = work();
  console.log(`${what.padEnd(58)} ${(performance.now() - from).toFixed(0).padStart(7)} ms`);
  return answer;
};

const size = { hulls, lots, lotsPerHull: 60, claims, strata: 40 };
const { judged, exposures } = timed('generate the case', () => generatedCase(size, 1));
const uses = exposures.reduce((total, exposure) => total + exposure.hulls.length, 0);
console.log(`${hulls} hulls, ${exposures.length} lots, ${uses} uses, ${claims} claims`);

const cells = timed('risk sets', () => riskCells(judged));
const suspects = timed('classes of inseparable lots', () => inseparable(candidatesOf(exposures, [0])));
const { ranked, untestable } = timed('exact log-rank of every class, and q', () =>
  screenClasses(suspects, cells, SETTINGS.untestableAbove),
);
console.log(`${ranked.length} classes tested, ${untestable.length} untestable`);
const best = ranked.slice(0, SETTINGS.weighed).map(({ suspect }) => suspect);
timed('posterior of 200 classes over the grid', () =>
  weigh(best, judged, cells, { ...SETTINGS, priors: SETTINGS.priorTimes.map((times) => times / lots) }),
);
timed(`permutation, ${SETTINGS.worlds} worlds`, () =>
  smallestByChance(
    ranked.map(({ suspect }) => suspect),
    cells,
    { random: seeded(1), worlds: SETTINGS.worlds },
  ),
);
const found = timed('the whole attribution', () => attribute(judged, exposures));
console.log(`verdict: ${found.verdict}; least q ${Math.min(...found.rows.map(({ q }) => q)).toFixed(3)}`);
