import { standing } from '../facts/standing.js';

/** SQL: the state of a mold at an instant: 1, and one more for each rework. */
export const moldStateAt = (mold: string, at: string): string => `(
  select count(*)::int + 1 from fact.mold_care rework
  where rework.mold_id = ${mold} and rework.what = 'reworked' and rework.happened_at <= ${at} and ${standing('rework')})`;

/**
 * SQL: the care of a mold that is overdue at an instant, as a list of texts: of each kind the newest, when as many parts
 * were begun since, or its day is past.
 */
export const careOverdue = (mold: string, at: string): string => `array(
  select newest.what || case when newest.due_on < ${at}::date then ' was due on ' || newest.due_on
    else ' was due after ' || newest.due_pulls || ' pulls' end
  from (
    select distinct on (care.what) care.* from fact.mold_care care
    where care.mold_id = ${mold} and care.happened_at <= ${at} and ${standing('care')}
    order by care.what, care.happened_at desc, care.recorded_at desc) newest
  where newest.due_on < ${at}::date or newest.due_pulls <= (
    select count(*) from fact.part pulled where pulled.mold_id = ${mold} and pulled.happened_at >= newest.happened_at
      and pulled.happened_at < ${at} and ${standing('pulled')})
  order by newest.what)`;
