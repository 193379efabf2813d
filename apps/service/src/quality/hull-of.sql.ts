import { standing } from '../platform/facts/standing.js';

/** SQL: the number of the hull that a part is joined to; null while it is in none. */
export const hullOf = (part: string): string => `(
  select n.as_printed from fact.joint j join fact.hull_number n on n.hull_id = j.hull_id and n.kind = 'hull number'
  where j.part_id = ${part} and ${standing('j')} limit 1)`;
