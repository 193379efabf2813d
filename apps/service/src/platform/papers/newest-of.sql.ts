/**
 * SQL of one row, `at`: when the newest of the facts listed was recorded, or the newest correction that names one.
 *
 * @param touched SQL of every version of every fact that the paper rests on, as id and recorded_at
 * @param walk SQL to stand before, as `recursive down(id) as (...)`; may be empty
 */
export const newestOf = (touched: readonly string[], walk = ''): string => `
  with ${walk === '' ? '' : `${walk},`} touched as (${touched.join(' union all ')})
  select greatest(max(t.recorded_at), max(c.recorded_at)) as at
  from touched t left join fact.correction c on c.corrects = t.id`;

/** SQL of all versions of the facts of a table that meet a condition on `x`, for `newestOf`. */
export const versions = (table: string, where: string): string =>
  `select x.id, x.recorded_at from fact.${table} x where ${where}`;
