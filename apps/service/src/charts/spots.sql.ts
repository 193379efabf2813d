import type { Charted } from '@hull-record/contracts';
import { READING_KINDS_OF_THE_SHOP, type ReadingKind } from '@hull-record/trade';
import { standing } from '../platform/facts/standing.js';

/** Layers of parts of a model ($1) and kind ($2), narrowed to a layer, mold, gun and area ($3 to $6) where they are given. */
export const MADE = `made as (
  select r.root, r.part_id, r.ended_at, r.area, r.air_temperature_k, r.mold_temperature_k, r.relative_humidity, y.code,
    y.climate, s.version, m.code as model
  from fact.part p join fact.layer_record r on r.part_id = p.id and ${standing('r')}
  join fact.schedule_layer y on y.id = r.schedule_layer_id join fact.schedule s on s.id = y.schedule_id
  join fact.model m on m.id = p.model_id
  where p.model_id = $1 and p.kind = $2 and ($3::text is null or y.code = $3) and ($4::uuid is null or p.mold_id = $4)
    and ($5::uuid is null or exists (
      select from fact.used g where g.into_id = r.root and g.gun_id = $5 and ${standing('g')}))
    and ($6::text is null or r.area = $6))`;

const COLUMNS = 'part_id, at, si, below, unit, low, high, limit_unit, source';

/** A spot that was read again after rework counts as it was first read: so the process made it. */
const readings = (what: Charted): string => `
  select distinct on (g.of_id, g.spot) made.part_id, g.happened_at as at, g.si_value as si, g.si_below as below, g.unit,
    (g.rule #>> '{limits,min}')::float as low, (g.rule #>> '{limits,max}')::float as high,
    g.rule #>> '{limits,unit}' as limit_unit, g.rule ->> 'text' as source
  from made join fact.reading g on g.of_id = made.root and g.what = '${what}' and ${standing('g')}
  order by g.of_id, g.spot, g.happened_at, g.recorded_at, g.id`;

/** Readings of whole parts are of no layer, gun or area: such a chart has them as long as none is asked for. */
const wholes = (what: Charted): string => `
  select distinct on (g.of_id, g.spot) p.id as part_id, g.happened_at as at, g.si_value as si, g.si_below as below, g.unit,
    (g.rule #>> '{limits,min}')::float as low, (g.rule #>> '{limits,max}')::float as high,
    g.rule #>> '{limits,unit}' as limit_unit, g.rule ->> 'text' as source
  from fact.part p join fact.reading g on g.of_id = p.id and g.of_kind = 'part' and g.what = '${what}' and ${standing('g')}
  where p.model_id = $1 and p.kind = $2 and $3::text is null and ($4::uuid is null or p.mold_id = $4)
    and $5::uuid is null and $6::text is null
  order by g.of_id, g.spot, g.happened_at, g.recorded_at, g.id`;

const CLIMATE = {
  'air temperature': { column: 'air_temperature_k', unit: 'C', limits: 'airTemperature' },
  'mold temperature': { column: 'mold_temperature_k', unit: 'C', limits: null },
  'relative humidity': { column: 'relative_humidity', unit: '%', limits: 'relativeHumidity' },
} as const;

const climate = ({ column, unit, limits }: (typeof CLIMATE)[keyof typeof CLIMATE]): string => {
  const of = (key: string): string => (limits === null ? 'null' : `made.climate #>> '{${limits},${key}}'`);
  return `
    select made.part_id, made.ended_at as at, made.${column} as si, null::float as below, '${unit}' as unit,
      (${of('min')})::float as low, (${of('max')})::float as high, ${of('unit')} as limit_unit,
      'Schedule ' || made.model || ' version ' || made.version as source
    from made where made.${column} is not null`;
};

/** A verdict keeps what was measured by it, and the limits of its time. */
const verdict = (topic: string, figure: string, limits: readonly [string, string], unit: string): string => `
  select distinct on (made.part_id, v.about_id) made.part_id, made.ended_at as at, (v.figures ->> '${figure}')::float * ${unit === '%' ? '0.01' : '1'} as si,
    null::float as below, '${unit}' as unit, (v.figures ->> '${limits[0]}')::float as low,
    (v.figures ->> '${limits[1]}')::float as high, '${unit}' as limit_unit, v.source
  from made join fact.verdict v on ABOUT and v.topic = '${topic}' and ${standing('v')}
  where v.figures ->> '${figure}' is not null order by made.part_id, v.about_id, made.ended_at`;

const catalyst = verdict('catalyst', 'percentByMass', ['minPercent', 'maxPercent'], '%');
/** A bucket that went into several layers of a part is one bucket. */
const BUCKETS = `v.about_id in (select u.lot_id from fact.used u where u.into_id = made.root and ${standing('u')})`;

/** SQL of the spots of a chart, over the layers `made`. */
export const spotsOf = (what: Charted): string => {
  if (what in CLIMATE) return climate(CLIMATE[what as keyof typeof CLIMATE]);
  if (what === 'surface above dew point')
    return verdict('mold surface over dew point', 'marginC', ['leastMarginC', 'none'], 'K').replace(
      'ABOUT',
      'v.about_id = made.root',
    );
  const { on }: ReadingKind = READING_KINDS_OF_THE_SHOP[what as keyof typeof READING_KINDS_OF_THE_SHOP];
  const all = [
    ...(on.includes('layer') ? [readings(what)] : []),
    ...(on.includes('part') ? [wholes(what)] : []),
    ...(what === 'catalyst'
      ? [catalyst.replace('ABOUT', 'v.about_id = made.root'), catalyst.replace('ABOUT', BUCKETS)]
      : []),
  ];
  return all.map((sql) => `select ${COLUMNS} from (${sql}) of_kind`).join(' union all ');
};

/** SQL of hulls, newest first, each with its spots: days from $7 to $8 by the clock of the plant, at most $9 of them. */
export const hullsOf = (what: Charted): string => `
  with ${MADE}, spots as (${spotsOf(what)}),
  by_part as (
    select s.part_id, min(s.at) as at, json_agg(json_build_object('si', s.si, 'below', s.below, 'unit', s.unit, 'low', s.low,
      'high', s.high, 'limitUnit', s.limit_unit, 'source', s.source) order by s.at, s.si) as spots
    from spots s group by s.part_id)
  select p.number as part, b.at, b.spots, count(*) over ()::int as all,
    (select n.as_printed from fact.joint j join fact.hull_number n on n.hull_id = j.hull_id and n.kind = 'hull number'
      where j.part_id = p.id and ${standing('j')} limit 1) as hull
  from by_part b join fact.part p on p.id = b.part_id join fact.plant o on o.id = p.plant_id
  where ($7::date is null or (b.at at time zone o.time_zone)::date >= $7)
    and ($8::date is null or (b.at at time zone o.time_zone)::date <= $8)
  order by b.at desc, p.id desc limit $9`;
