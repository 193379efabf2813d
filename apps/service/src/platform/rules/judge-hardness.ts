import { judgeBarcol, NINETY_PERCENT } from '@hull-record/trade';
import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { standingPlaces } from '../places/places.js';
import { judgeAlone, keepVerdicts, type Found } from '../verdicts/keep-verdict.js';
import { materialsIn, type MaterialIn } from './materials-in.js';
import { plantRulesAt } from './plant-rules.sql.js';

export const HARDNESS = 'hardness';

/** The newest Barcol reading of each spot of a place. */
const READ = `
  select distinct on (g.spot) g.value::float8 as value, g.happened_at as at from fact.reading g
  where g.of_id = $1 and g.what = 'Barcol hardness' and ${standing('g')} order by g.spot, g.happened_at desc, g.recorded_at desc, g.id`;

const USED = `select u.lot_id as lot, u.kg from fact.used u where u.into_id = $1 and ${standing('u')}`;

interface Reading {
  readonly value: number;
  readonly at: Date;
}

/**
 * Judges the Barcol hardness of a layer or repair as a set: the highest and the lowest reading dropped, the mean of the
 * rest against the minimum of its resin, or of its gel coat where there is no resin. The two are never pooled.
 */
export const judgeHardness = async (fact: Fact, kind: string, place: string): Promise<void> => {
  await judgeAlone(fact, HARDNESS, place);
  const readings = await fact.tx.query<Reading[]>(READ, [place]);
  const [where] = await fact.tx.query<{ part_id: string }[]>(standingPlaces('p.root = $1'), [place]);
  const about = { aboutKind: kind, aboutId: place, partId: where?.part_id ?? null };
  const found = readings.length === 0 ? [] : await judge(fact, place, readings);
  await keepVerdicts(fact, about, [HARDNESS], found);
};

const judge = async (fact: Fact, place: string, readings: readonly Reading[]): Promise<readonly Found[]> => {
  const at = new Date(Math.max(...readings.map((reading) => reading.at.getTime())));
  const materials = await materialsIn(fact.tx, await fact.tx.query(USED, [place]), at);
  const main = materials.find(({ role }) => role === 'resin') ?? materials.find(({ role }) => role === 'gel coat');
  const { barcolFraction } = await plantRulesAt(fact.tx, fact.author.plantId, at);
  return main?.makerData.minimumBarcol === undefined
    ? []
    : [
        judgeBy(
          main,
          main.makerData.minimumBarcol,
          barcolFraction,
          readings.map(({ value }) => value),
        ),
      ];
};

const judgeBy = (
  { role, name, makerData }: MaterialIn,
  minimum: number,
  fraction: number,
  values: readonly number[],
): Found => {
  const side = role === 'gel coat' ? 'gel coat' : 'laminate';
  const source = `${makerData.dataSheet ?? `Data of ${name} as registered.`}${fraction === 1 ? '' : ` Plant rule: ${fraction * 100} % of it is enough (${NINETY_PERCENT.source}).`}`;
  const judged = judgeBarcol({ values, side }, { minimum, fraction, source });
  const found = {
    topic: HARDNESS,
    figures: {
      readings: values.length,
      meanBarcol: judged.mean,
      trimmedMeanBarcol: judged.trimmedMean,
      leastBarcol: judged.limit,
    },
    rule: "Mean of the readings without the highest and the lowest, unrounded (practice of a resin maker's fabricating guide, p. 34).",
    source,
  };
  const warned = judged.warnings.length === 0 ? '' : ` ${judged.warnings.join(' ')}`;
  if (judged.trimmedMean === null) return { ...found, verdict: 'cannot be judged', detail: warned.trim() };
  const detail = `${judged.trimmedMean.toFixed(1)} Barcol on the ${side} over ${judged.counted} readings; at least ${judged.limit.toFixed(1)} are asked of ${name}.${warned}`;
  return judged.verdict === 'hard enough'
    ? { ...found, verdict: 'inside', detail }
    : { ...found, verdict: 'outside', detail, breaks: 'hardness-too-low' };
};
