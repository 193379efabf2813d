import { fromSi, judgeClimate, SHOP_WINDOWS, type ClimatePoint, type ShopWindow } from '@hull-record/trade';
import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { judgeAlone, keepVerdicts, type Found } from '../verdicts/keep-verdict.js';
import { plantRulesAt } from './plant-rules.sql.js';

export const SHOP_CLIMATE = 'shop climate';

/** The log is looked at from so long before the work on: for the hours of warmth before it, and the drift of a day. */
const BEFORE_MS = 26 * 3_600_000;

interface Made {
  readonly part_id: string;
  readonly started_at: Date;
  readonly ended_at: Date;
  readonly area: string | null;
  readonly sprayed: boolean;
}

const MADE = `
  select r.part_id, r.started_at, r.ended_at, r.area, s.process = 'spray-up' as sprayed
  from fact.layer_record r join fact.schedule_layer y on y.id = r.schedule_layer_id join fact.schedule s on s.id = y.schedule_id
  where r.root = $1 and ${standing('r')}`;

const LOG = `
  select c.happened_at as at, c.air_temperature_k as k, c.relative_humidity as humidity from fact.climate_point c
  where c.plant_id = $1 and c.area = $2 and c.happened_at between $3 and $4 and ${standing('c')} order by c.happened_at`;

/** Judges the climate log of the area in which a layer was made, by the window that the plant chose. */
export const judgeShopClimate = async (fact: Fact, layer: string): Promise<void> => {
  await judgeAlone(fact, SHOP_CLIMATE, layer);
  const [made] = await fact.tx.query<Made[]>(MADE, [layer]);
  if (!made) return;
  const about = { aboutKind: 'layer', aboutId: layer, partId: made.part_id };
  const window = made.area === null ? undefined : await windowAt(fact, made.started_at);
  const found = window === undefined ? [] : [judge(made, await logOf(fact, made), window)];
  await keepVerdicts(fact, about, [SHOP_CLIMATE], found);
};

const windowAt = async (fact: Fact, at: Date): Promise<ShopWindow | undefined> => {
  const { shopWindow } = await plantRulesAt(fact.tx, fact.author.plantId, at);
  return shopWindow === null ? undefined : SHOP_WINDOWS[shopWindow as keyof typeof SHOP_WINDOWS];
};

const logOf = async (fact: Fact, { area, started_at, ended_at }: Made): Promise<readonly ClimatePoint[]> => {
  const since = new Date(started_at.getTime() - BEFORE_MS);
  const rows = await fact.tx.query<{ at: Date; k: number; humidity: number }[]>(LOG, [
    ...[fact.author.plantId, area, since, ended_at],
  ]);
  return rows.map(({ at, k, humidity }) => ({
    at: at.getTime(),
    airC: rounded(fromSi(k, 'C')),
    humidityPercent: rounded(humidity * 100),
  }));
};

/** Without the noise of converting there and back. */
const rounded = (value: number): number => Number(value.toPrecision(12));

const judge = (
  { area, started_at, ended_at, sprayed }: Made,
  log: readonly ClimatePoint[],
  window: ShopWindow,
): Found => {
  const work = { startedAt: started_at.getTime(), endedAt: ended_at.getTime(), sprayed };
  const faults = judgeClimate(log, work, window);
  const during = log.filter(({ at }) => at >= work.startedAt && at <= work.endedAt);
  const found = {
    topic: SHOP_CLIMATE,
    figures: {
      area,
      pointsDuring: during.length,
      coldestC: during.length === 0 ? null : Math.min(...during.map(({ airC }) => airC)),
      warmestC: during.length === 0 ? null : Math.max(...during.map(({ airC }) => airC)),
      dampestPercent: during.length === 0 ? null : Math.max(...during.map(({ humidityPercent }) => humidityPercent)),
    },
    rule: `Shop window "${window.name}": each point of the log while the layer was made, the hours of warmth before it, and the drift within 24 h.`,
    source: window.source,
  };
  if (faults.length === 0)
    return {
      ...found,
      verdict: 'inside',
      detail: `${during.length} points of the log of ${area ?? ''} while it was made, all inside.`,
    };
  const detail = [...new Set(faults.map((fault) => fault.detail))].join(' ');
  if (faults.every(({ rule }) => rule === 'no reading')) return { ...found, verdict: 'cannot be judged', detail };
  return { ...found, verdict: 'outside', detail: `Area ${area ?? ''}: ${detail}`, breaks: 'shop-climate-outside' };
};
