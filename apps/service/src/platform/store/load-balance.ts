import type { EntityManager } from 'typeorm';
import type { LotBalance } from '@hull-record/contracts';
import { balanceOf, type BalanceEvent, type Basis } from '@hull-record/trade';
import { standing } from '../facts/standing.js';
import { uuidOrNull } from '../lookups/uuid-or-null.js';
import { standingPlaces } from '../places/places.js';
import { NotThere } from '../refusals.js';

const LOT = `
  select l.root as id, l.code, l.kg, l.basis, m.loss_allowance as allowance from fact.lot l
  left join fact.tank t on t.id = l.tank_id
  left join fact.material m on m.root = coalesce(l.material_id, t.material_id) and ${standing('m')}
  where (l.code = $1 or l.root = ${uuidOrNull('$1::text')}) and ${standing('l')} order by l.recorded_at limit 1`;

/** Everything that happened to the kilograms of lot `$1`; the next fill of its tank leaves nothing of it. */
const EVENTS = `
  select 'used' as kind, u.happened_at, u.kg, u.basis, coalesce((
      select place.into_kind || ' of part ' || q.number from (${standingPlaces('p.root = u.into_id')}) place join fact.part q on q.id = place.part_id), u.into_kind) as what
    from fact.used u where u.lot_id = $1 and ${standing('u')}
  union all select 'put into', i.happened_at, i.kg, i.basis, 'lot ' || l.code
    from fact.lot_input i join fact.lot l on l.root = i.lot_id and ${standing('l')} where i.input_id = $1 and ${standing('i')}
  union all select 'lost', o.happened_at, o.kg, o.basis, o.what || ': ' || o.reason from fact.lot_loss o where o.lot_id = $1 and ${standing('o')}
  union all select 'counted', n.happened_at, n.kg, null, 'count' from fact.lot_count n where n.lot_id = $1 and n.container_id is null and ${standing('n')}
  union all select 'counted', min(later.happened_at), 0, null, 'the heel was measured before the next fill'
    from fact.lot filled join fact.lot later on later.tank_id = filled.tank_id and later.happened_at > filled.happened_at and ${standing('later')}
    where filled.root = $1 and ${standing('filled')} having min(later.happened_at) is not null`;

interface Row {
  readonly kind: BalanceEvent['kind'];
  readonly happened_at: Date;
  readonly kg: number;
  readonly basis: Basis | null;
  readonly what: string;
}

type Lot = {
  readonly id: string;
  readonly code: string;
  readonly kg: number;
  readonly basis: Basis;
  readonly allowance: number | null;
};

/**
 * Accounts for every kilogram of a lot, named by code or id, line by line.
 *
 * @throws NotThere
 */
export const loadBalance = async (tx: EntityManager, lot: string): Promise<LotBalance> => {
  const [found] = await tx.query<Lot[]>(LOT, [lot]);
  if (!found) throw new NotThere('lot', lot);
  const rows = await tx.query<Row[]>(EVENTS, [found.id]);
  const events = rows.map(
    ({ happened_at, basis, ...row }) => ({ ...row, at: happened_at.getTime(), basis }) as BalanceEvent,
  );
  const balance = balanceOf(found, events, found.allowance);
  const lines = balance.lines.map(({ at, ...line }) => ({ ...line, happenedAt: new Date(at).toISOString() }));
  return { lot: found.code, lossAllowance: found.allowance, ...balance, lines };
};
