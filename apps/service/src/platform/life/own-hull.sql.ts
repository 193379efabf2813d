import { standing } from '../facts/standing.js';

/** SQL: the dealer who has a hull or had it last, by the newest fact of its life that names one; null when none does. */
export const lastDealerOf = (hull: string): string => `(
  select held.dealer_id from fact.life_fact held
  where held.hull_id = ${hull} and held.dealer_id is not null and ${standing('held')}
  order by held.happened_at desc, held.recorded_at desc, held.id limit 1)`;
