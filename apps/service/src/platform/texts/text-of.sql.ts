/**
 * SQL of a text that somebody wrote freely, as it is shown: by its redacted wording when it has one, which says so; else
 * as it lies apart; else as it stands in a fact that was recorded before texts lay apart. What was redacted is shown so
 * in every version of the fact, and as of any instant: what was there is to be seen by nobody.
 *
 * @param alias of the fact's table in the query; not `rd` or `kt`, which are taken here
 */
export const textOf = (alias: string, field: string): string => `coalesce(
  (select rd.wording || ' [redacted on ' || to_char(rd.happened_at at time zone 'UTC', 'YYYY-MM-DD') || ']'
   from fact.text_redacted rd where rd.of_root = ${alias}.root and rd.field = '${field}'
   order by rd.recorded_at desc, rd.id desc limit 1),
  (select kt.value from work.free_text kt where kt.commitment = ${alias}.${field}), ${alias}.${field})`;
