import { standing } from '../facts/standing.js';

/** SQL: the schedule version a part follows now: that it was moved to, or that it was started with. */
export const scheduleOf = (p: string, asOf?: string): string => `coalesce((
  select moved.schedule_id from fact.part_schedule moved where moved.part_id = ${p}.id and ${standing('moved', asOf)} limit 1), ${p}.schedule_id)`;

const positionIn = (schedule: string): string =>
  `(select named.position from fact.schedule_layer named where named.schedule_id = ${schedule} and named.code = moved.from_layer)`;

/**
 * SQL of the schedule layers that a part is made of, to stand in a lateral join.
 *
 * Those of the version it was started with; once it was moved, of that version those before the layer named, and of the
 * version it was moved to the others. What was made is judged by what held when it was made.
 */
export const layersOf = (p: string, asOf?: string): string => `(
  select y.* from fact.schedule_layer y
  left join fact.part_schedule moved on moved.part_id = ${p}.id and ${standing('moved', asOf)}
  where (moved.id is null and y.schedule_id = ${p}.schedule_id)
    or (y.schedule_id = ${p}.schedule_id and y.position < ${positionIn(`${p}.schedule_id`)})
    or (y.schedule_id = moved.schedule_id and y.position >= ${positionIn('moved.schedule_id')}))`;
