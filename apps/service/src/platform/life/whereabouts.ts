import { standing } from '../facts/standing.js';

/** SQL: where a hull is now and since when, from its newest life fact, as JSON. Once it is sold, the dealer is the one who had it last. */
export const whereabouts = (hull: string, asOf?: string): string => `(
  select json_build_object('what', f.what, 'dealer', coalesce(d.name, case when f.what in ('sold to first purchaser', 'warranty registered', 'transferred') then (
    select sd.name from fact.life_fact sold join fact.dealer sd on sd.id = sold.dealer_id
    where sold.hull_id = f.hull_id and sold.happened_at <= f.happened_at and ${standing('sold', asOf)}
    order by sold.happened_at desc, sold.recorded_at desc, sold.id limit 1) end), 'since', f.happened_at)
  from fact.life_fact f left join fact.dealer d on d.id = f.dealer_id
  where f.hull_id = ${hull} and f.what <> 'HIN affixed' and ${standing('f', asOf)}
  order by f.happened_at desc, f.recorded_at desc, f.id limit 1)`;
