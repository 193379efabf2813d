import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { ClimateLogView, ReadClimateQuery } from '@hull-record/contracts';
import { dewPointC, fromSi, largestDailySpreadC } from '@hull-record/trade';
import { standing } from '../platform/facts/standing.js';

/** So many points are shown at most: a month at ten minutes. */
const SHOWN = 5_000;

const POINTS = `
  select c.id, c.happened_at as at, c.air_temperature_k as k, c.relative_humidity as humidity from fact.climate_point c
  where c.area = $1 and c.happened_at >= $2 and c.happened_at <= $3 and ${standing('c')} order by c.happened_at, c.id limit ${SHOWN}`;

interface Row {
  readonly id: string;
  readonly at: Date;
  readonly k: number;
  readonly humidity: number;
}

/** The climate log of an area, with the dew point of each point. */
@Injectable()
export class ReadClimate {
  constructor(private readonly db: DataSource) {}

  async run(area: string, { from, to }: ReadClimateQuery): Promise<ClimateLogView> {
    const rows = await this.db.query<Row[]>(POINTS, [area, from ?? '-infinity', to ?? 'infinity']);
    const points = rows.map(({ id, at, k, humidity }) => {
      const airC = fromSi(k, 'C');
      const humidityPercent = humidity * 100;
      return { id, at: at.toISOString(), airC, humidityPercent, dewPointC: dewPointC(airC, humidityPercent) };
    });
    const log = rows.map(({ at }, i) => ({ ...(points[i] as (typeof points)[number]), at: at.getTime() }));
    return { area, points, largestDailySpreadC: log.length === 0 ? null : largestDailySpreadC(log) };
  }
}
