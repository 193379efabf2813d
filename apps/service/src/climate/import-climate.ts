import { Injectable } from '@nestjs/common';
import type { ImportClimate as Request } from '@hull-record/contracts';
import { fromSi, toSi, whyNoDewPoint } from '@hull-record/trade';
import type { Fact, Found } from '../platform/facts/fact.js';
import { assertNotAhead } from '../platform/facts/not-ahead.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { Conflict, InvalidRequest } from '../platform/refusals.js';
import { ClimatePointEntity } from './climate-point.entity.js';

export interface ImportedClimate extends Found {
  readonly area: string;
  readonly points: number;
}

/** Imports a series of the climate log of an area. Layers made there meanwhile are judged by it, also when it comes late. */
@Injectable()
export class ImportClimate {
  constructor(private readonly record: RecordFact) {}

  run(area: string, request: Request): Promise<Receipt<ImportedClimate>> {
    assertPoints(request);
    return this.record.run('climate imported', { ...request, area }, async (fact) => {
      await assertNew(fact, area, request);
      await fact.insertMany(
        ClimatePointEntity,
        request.points.map(({ at, ...entered }) => ({
          ...{ area, happenedAt: new Date(at), entered },
          airTemperatureK: toSi(entered.airTemperature.value, entered.airTemperature.unit),
          relativeHumidity: entered.relativeHumidity.value / 100,
        })),
      );
      return { area, points: request.points.length, ...fact.found() };
    });
  }
}

/** What cannot be is refused point by point, and so is an instant that stands twice. */
const assertPoints = ({ points }: Request): void => {
  const instants = points.map(({ at }) => Date.parse(at));
  const seen = new Set<number>();
  const problems = points.flatMap(({ airTemperature: { value, unit }, relativeHumidity }, i) => {
    const at = instants[i] as number;
    const twice = seen.has(at);
    seen.add(at);
    if (twice) return [{ pointer: `/points/${i}/at`, detail: 'is an instant that stands in this series already' }];
    const airC = unit === 'C' ? value : fromSi(toSi(value, unit), 'C');
    const why = whyNoDewPoint(airC, relativeHumidity.value);
    return why === undefined ? [] : [{ pointer: `/points/${i}`, detail: why }];
  });
  if (problems.length > 0) throw new InvalidRequest(problems);
  points.forEach(({ at }, i) => {
    assertNotAhead(at, `/points/${i}/at`);
  });
};

/** An area has one point at an instant; of two imports at once the second sees the first. */
const assertNew = async (fact: Fact, area: string, { points }: Request): Promise<void> => {
  await fact.tx.query('select pg_advisory_xact_lock(hashtextextended($1, 5))', [`${fact.author.plantId}/${area}`]);
  const [known] = await fact.tx.query<{ at: Date }[]>(
    `select c.happened_at as at from fact.climate_point c
     where c.plant_id = $1 and c.area = $2 and c.happened_at = any($3) and ${standing('c')} order by 1 limit 1`,
    [fact.author.plantId, area, points.map(({ at }) => new Date(at))],
  );
  if (!known) return;
  const at = known.at.toISOString();
  throw new Conflict(
    'climate-on-record',
    `The log of ${area} has a point of ${at} already: leave it out, or withdraw that first.`,
    '/points',
  );
};
