/**
 * SQL: marks the exposure of sources in `changed` as out of date, in the transaction that changed what is in a place.
 *
 * A mark more for each change, never one that is changed: writers must not wait for each other here.
 */
export const MARK_EXPOSURE = `
  insert into derived.stale_exposure (source_id) select distinct source_id from changed where source_id is not null`;

/** SQL: nothing was packed yet. */
export const NOTHING_PACKED = 'exists (select from derived.stale_exposure none where none.source_id is null)';

/** SQL: what is packed of the source of the alias `x` is not what is in places now. */
export const isStale = (source: string): string =>
  `exists (select from derived.stale_exposure stale where stale.source_id = ${source})`;
