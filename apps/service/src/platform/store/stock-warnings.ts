import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { bookKg } from '../lots/book-kg.js';
import type { ResolvedTaken } from '../lots/resolved-taken.js';
import { stateOrDefault } from '../lots/find-lots.js';
import { expiryAt, holdsOn } from './holds.sql.js';

/** So many lots of a material, those that came last, are looked at for one that is still there. */
const LOOKED_AT = 40;

const LAST_DAY = (l: string): string => `coalesce(${expiryAt(l, '$2')}, 'infinity'::date)`;

/** The first lot, in the order of the stock list, that was to be used before lot `$1` at `$2` and is still there. */
const FIRST = `
  select e.code from fact.lot l
  join fact.plant p on p.id = l.plant_id
  join lateral (
    select e.root, e.code, e.origin, e.expires_on, e.happened_at from fact.lot e
    where e.material_id = l.material_id and e.origin = 'received' and e.root <> l.root and e.happened_at <= $2 and ${standing('e')}
    order by e.happened_at desc limit ${LOOKED_AT}) e on true
  where l.root = $1 and ${standing('l')}
    and (${LAST_DAY('e')}, e.happened_at, e.code) < (${LAST_DAY('l')}, l.happened_at, l.code)
    and ${LAST_DAY('e')} >= (($2 at time zone p.time_zone)::date) and ${stateOrDefault('e', '$2')} = 'released'
    and cardinality(${holdsOn('e.root', 'null::uuid', '$2')}) = 0 and ${bookKg('e.root')} > 1e-6
  order by ${LAST_DAY('e')}, e.happened_at, e.code limit 1`;

/**
 * What to say about material that was taken: a lot that is to be used before it is still there (used systematically and
 * sequentially: LR Rules for Materials 2022 Ch 14 Sec 5.3.5; that the first to expire goes first is common practice), or
 * more was taken than there was, which asks for a count. Never a nonconformity.
 */
export const warnOfStock = async (fact: Fact, taken: readonly ResolvedTaken[], at: Date): Promise<void> => {
  for (const { lot } of new Map(taken.map((each) => [each.lot.id, each])).values()) {
    const [left] = await fact.tx.query<[{ kg: number | null }]>(`select ${bookKg('$1::uuid')} as kg`, [lot.id]);
    if (left.kg !== null && left.kg < -1e-6)
      fact.warn(`Lot ${lot.code} is overdrawn by ${(-left.kg).toFixed(3)} kg: count what is left of it.`);
    if (lot.origin !== 'received') continue;
    const [first] = await fact.tx.query<{ code: string }[]>(FIRST, [lot.id, at]);
    if (first)
      fact.warn(`Lot ${first.code} of the same material is to be used before lot ${lot.code} and is still in stock.`);
  }
};
