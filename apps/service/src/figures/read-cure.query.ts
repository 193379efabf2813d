import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { CureQuery, CureView } from '@hull-record/contracts';
import { CURE_IN_THE_SHOP, degreeHours, fromSi, longestHoursAtLeast, type ClimatePoint } from '@hull-record/trade';
import { standing } from '../platform/facts/standing.js';
import { NotThere } from '../platform/refusals.js';

const PART = `
  select p.id from fact.part p where (p.number = $1 or p.id::text = lower($1)) and ${standing('p')} order by p.recorded_at limit 1`;

/** Each layer with the log of its area since it ended, until the next that was recorded there is of no matter. */
const LAYERS = `
  select y.code as layer, r.area, r.ended_at as "endedAt",
    coalesce((select json_agg(json_build_object('at', c.happened_at, 'k', c.air_temperature_k, 'humidity', c.relative_humidity)
        order by c.happened_at)
      from fact.climate_point c
      where c.plant_id = r.plant_id and c.area = r.area and c.happened_at >= r.ended_at
        and c.happened_at <= r.ended_at + interval '30 days' and ${standing('c')}), '[]') as log
  from fact.layer_record r join fact.schedule_layer y on y.id = r.schedule_layer_id
  where r.part_id = $1 and ${standing('r')} order by r.ended_at, y.position`;

interface Row {
  readonly layer: string;
  readonly area: string | null;
  readonly endedAt: Date;
  readonly log: readonly { readonly at: string; readonly k: number; readonly humidity: number }[];
}

/** How warm the layers of a part have lain since each ended, for 30 days at most. */
@Injectable()
export class ReadCure {
  constructor(private readonly db: DataSource) {}

  async run(number: string, { baseC }: CureQuery): Promise<CureView> {
    const [part] = await this.db.query<{ id: string }[]>(PART, [number]);
    if (!part) throw new NotThere('part', number);
    const rows = await this.db.query<Row[]>(LAYERS, [part.id]);
    const { hours, atLeastC } = CURE_IN_THE_SHOP;
    return {
      baseC,
      layers: rows.map((row) => cureOf(row, baseC)),
      rule: `At least ${hours} h at ${atLeastC} °C or more after laminating; a gap of the log over ${GAP_HOURS} h is not counted as warm (common practice).`,
      source: 'Class rule on production procedures, 3.2.7 (society not named on the page).',
    };
  }
}

const GAP_HOURS = 4;

const cureOf = ({ layer, area, endedAt, log }: Row, baseC: number): CureView['layers'][number] => {
  const points = log.map(({ at, k, humidity }): ClimatePoint => {
    const airC = Number(fromSi(k, 'C').toPrecision(12));
    return { at: Date.parse(at), airC, humidityPercent: Number((humidity * 100).toPrecision(12)) };
  });
  const last = points.at(-1);
  const span = { from: endedAt.getTime(), until: last?.at ?? endedAt.getTime() };
  const warmHours = longestHoursAtLeast(points, CURE_IN_THE_SHOP.atLeastC, GAP_HOURS);
  return {
    ...{ layer, area, endedAt: endedAt.toISOString(), points: points.length, warmHours },
    until: last === undefined ? null : new Date(last.at).toISOString(),
    degreeHours: degreeHours(points, baseC, span),
    cured: warmHours >= CURE_IN_THE_SHOP.hours,
  };
};
