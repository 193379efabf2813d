import { standing } from '../facts/standing.js';

/** SQL: where a hull is now and since when, from its newest life fact, as JSON. */
export const whereabouts = (hull: string, asOf?: string): string => `(
  select json_build_object('what', f.what, 'dealer', d.name, 'since', f.happened_at)
  from fact.life_fact f left join fact.dealer d on d.id = f.dealer_id
  where f.hull_id = ${hull} and f.what <> 'HIN affixed' and ${standing('f', asOf)}
  order by f.happened_at desc, f.recorded_at desc, f.id limit 1)`;
