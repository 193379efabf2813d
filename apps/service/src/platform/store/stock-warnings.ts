import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { bookKg } from '../lots/book-kg.js';
import type { ResolvedTaken } from '../lots/resolved-taken.js';
import { stateOrDefault } from '../lots/find-lots.js';
import { expiryAt } from './holds.sql.js';

/** So many earlier lots are looked at for one that is still there. */
const LOOKED_AT = 12;

const OLDER = `
  select o.code from fact.lot l
  join lateral (
    select e.root, e.code, e.kg, e.origin, e.expires_on, e.happened_at from fact.lot e
    where e.material_id = l.material_id and e.origin = 'received' and e.root <> l.root and e.happened_at < l.happened_at and ${standing('e')}
    order by e.happened_at desc limit ${LOOKED_AT}) o on true
  where l.root = $1 and ${standing('l')} and l.origin = 'received'
    and ${stateOrDefault('o', '$2')} = 'released' and coalesce(${expiryAt('o', '$2')} >= $2::date, true) and ${bookKg('o.root')} > 1e-6
  order by o.happened_at limit 1`;

/**
 * What to say about material that was taken: an earlier lot of it is still there (used systematically and sequentially:
 * LR Rules for Materials 2022 Ch 14 Sec 5.3.5), or more was taken than there was, which asks for a count. Never a
 * nonconformity.
 */
export const warnOfStock = async (fact: Fact, taken: readonly ResolvedTaken[], at: Date): Promise<void> => {
  for (const { lot } of new Map(taken.map((each) => [each.lot.id, each])).values()) {
    const [left] = await fact.tx.query<[{ kg: number | null }]>(`select ${bookKg('$1::uuid')} as kg`, [lot.id]);
    if (left.kg !== null && left.kg < -1e-6)
      fact.warn(`Lot ${lot.code} is overdrawn by ${(-left.kg).toFixed(3)} kg: count what is left of it.`);
    if (lot.origin !== 'received') continue;
    const [older] = await fact.tx.query<{ code: string }[]>(OLDER, [lot.id, at]);
    if (older) fact.warn(`Lot ${older.code} of the same material came before lot ${lot.code} and is still in stock.`);
  }
};
