import type { Climate, PlantRules } from '@hull-record/contracts';
import { fromSi, judgeSurfaceMargin, MARGIN_RULES, toSi } from '@hull-record/trade';
import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { judgeAlone, keepVerdicts, type Found } from '../verdicts/keep-verdict.js';
import { plantRulesAt } from './plant-rules.sql.js';

export const SURFACE = 'mold surface over dew point';

interface Made {
  readonly part_id: string;
  readonly started_at: Date;
  readonly climate_entered: Climate | null;
}

const MADE = `
  select r.part_id, r.started_at, r.climate_entered from fact.layer_record r where r.root = $1 and ${standing('r')}`;

/** Judges how far the surface of the mold was above the dew point while a layer was made, by the rule of the plant then. */
export const judgeSurface = async (fact: Fact, layer: string): Promise<void> => {
  await judgeAlone(fact, SURFACE, layer);
  const [made] = await fact.tx.query<Made[]>(MADE, [layer]);
  if (!made) return;
  const about = { aboutKind: 'layer', aboutId: layer, partId: made.part_id };
  await keepVerdicts(fact, about, [SURFACE], await judgeClimate(fact, made));
};

const celsius = ({ value, unit }: NonNullable<Climate['airTemperature']>): number =>
  unit === 'C' ? value : fromSi(toSi(value, unit), 'C');

/** Nothing is said while one of the three is not measured: most layers go on a layer, not on the mold. */
const judgeClimate = async (fact: Fact, { climate_entered: climate, started_at }: Made): Promise<readonly Found[]> => {
  const { airTemperature: air, moldTemperature: mold, relativeHumidity: humidity } = climate ?? {};
  if (!air || !mold || !humidity) return [];
  return judge({ air, mold, humidity }, await plantRulesAt(fact.tx, fact.author.plantId, started_at));
};

interface Measured {
  readonly air: NonNullable<Climate['airTemperature']>;
  readonly mold: NonNullable<Climate['moldTemperature']>;
  readonly humidity: NonNullable<Climate['relativeHumidity']>;
}

const judge = ({ air, mold, humidity }: Measured, { marginRule }: PlantRules): readonly Found[] => {
  const measured = { airC: celsius(air), humidityPercent: humidity.value, surfaceC: celsius(mold) };
  const { verdict, dewPointC, marginC, source, note } = judgeSurfaceMargin(measured, marginRule);
  const asked = marginRule.replace(' ', ' °');
  const found = {
    topic: SURFACE,
    figures: { dewPointC, marginC, leastMarginC: MARGIN_RULES[marginRule].marginC },
    rule: `The surface of the mold at least ${asked} above the dew point (Magnus formula; Sonntag 1990, WMO Guide).`,
    source,
  };
  if (dewPointC === null || marginC === null)
    return [{ ...found, verdict: 'cannot be judged', detail: note ?? 'Cannot be judged.' }];
  const detail = `The surface was ${marginC.toFixed(1)} °C above the dew point of ${dewPointC.toFixed(1)} °C; at least ${asked} are asked.`;
  return verdict === 'enough'
    ? [{ ...found, verdict: 'inside', detail }]
    : [{ ...found, verdict: 'outside', detail, breaks: 'dew-point-margin' }];
};
