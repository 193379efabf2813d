/**
 * SQL that is true for a fact that no correction names: it stands.
 *
 * @param alias alias of the fact's table in the query; not `named`, which is taken here
 * @param asOf parameter (such as `$2`) with an instant: facts recorded later are left out, and so are their corrections
 */
export const standing = (alias: string, asOf?: string): string =>
  asOf === undefined
    ? `not exists (select from fact.correction named where named.corrects = ${alias}.id)`
    : `${alias}.recorded_at <= ${asOf} and not exists (select from fact.correction named where named.corrects = ${alias}.id and named.recorded_at <= ${asOf})`;
