import { standing } from '../platform/facts/standing.js';

/** SQL: a figure of the place of defect `d`, such as `girthMm`. */
const figure = (name: string): string => `(d.place ->> '${name}')::float8`;

/** SQL: whether a defect is on the shell; else it is on the transom. */
const ON_SHELL = "d.place ->> 'surface' = 'shell'";

/** SQL: mm from the transom on the shell, mm up from the keel on the transom. */
export const ALONG = `case when ${ON_SHELL} then ${figure('fromTransomMm')} else ${figure('heightMm')} end`;

/** SQL: mm from the keel or centreline, port positive. */
export const ACROSS = `(case d.place ->> 'side' when 'port' then 1 when 'starboard' then -1 else 0 end
  * case when ${ON_SHELL} then ${figure('girthMm')} else ${figure('offsetMm')} end)`;

/** SQL: parts of kind `$2` of model `$1` that fit mold `$3` and are among `$4`, the parts that hold some of a lot. */
export const PARTS = `
  from fact.part p
  join fact.model m on m.id = p.model_id and m.code = $1
  join fact.mold o on o.id = p.mold_id
  join fact.plant l on l.id = p.plant_id
  where p.kind = $2 and ${standing('p')} and ($3::text is null or o.code = $3) and ($4::uuid[] is null or p.id = any($4))`;

/**
 * SQL: the defects `d` of parts `p` from mold `o` that fit a filter, with the layer `y` of each.
 *
 * `$5` kind, `$6` layer, `$7` and `$8` first and last day by the clock of the plant, `$9` surface, `$10` to `$13` the
 * area: along from and to, across from and to. What is null does not narrow it.
 */
export const FOUND_DEFECTS = `
  from fact.defect d
  join (select p.id, p.number, o.code as mold, l.time_zone ${PARTS}) p on p.id = d.part_id
  left join fact.schedule_layer y on y.id = d.schedule_layer_id
  where ${standing('d')} and ($5::text is null or d.kind = $5) and ($6::text is null or y.code = $6)
    and ($7::date is null or (d.happened_at at time zone p.time_zone)::date >= $7)
    and ($8::date is null or (d.happened_at at time zone p.time_zone)::date <= $8)
    and ($9::text is null or d.place ->> 'surface' = $9)
    and ($10::float8 is null or ${ALONG} >= $10) and ($11::float8 is null or ${ALONG} <= $11)
    and ($12::float8 is null or ${ACROSS} >= $12) and ($13::float8 is null or ${ACROSS} <= $13)`;
