/**
 * SQL of the SHA-256 of the copy of a photo that is shown: the newest redacted one when it was redacted.
 *
 * @param alias of the table of the photo; not `rp`, which is taken here
 */
export const shownOf = (alias: string): string => `coalesce(
  (select rp.shown_sha256 from fact.photo_redacted rp where rp.photo_id = ${alias}.root
   order by rp.recorded_at desc, rp.id desc limit 1), ${alias}.shown_sha256)`;

/** SQL: the day on which a photo was redacted last, as text; null when it was not. */
export const redactedOn = (alias: string): string => `(
  select to_char(max(rp.happened_at) at time zone 'UTC', 'YYYY-MM-DD') from fact.photo_redacted rp
  where rp.photo_id = ${alias}.root)`;
