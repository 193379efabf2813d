/** SQL: one at a time numbers parts and packs what is told by them, so that two do not wait for each other's numbers. */
export const NUMBERS_LOCK = `select pg_advisory_xact_lock(hashtextextended('pack exposure', 0))`;
