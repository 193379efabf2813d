import type { EntityManager } from 'typeorm';
import { standing } from '../../platform/facts/standing.js';
import type { LotInHulls } from './case-inputs.js';

/**
 * Each received lot in each kind of layer of the hulls, with its largest share of like material there; from what was put in
 * before the time origin alone: what a repair brought afterwards cannot have led to it, and would seem to.
 */
const LOTS = `
  select l.code as lot, l.supplier_lot as "supplierLot", m.name as material,
    s.role || ' in ' || q.kind || ', ' || coalesce(y.name, s.into_kind) as family, at.place, max(s.kg / t.kg) as share
  from unnest($1::uuid[], $2::date[]) with ordinality as at(hull_id, origin, place)
  join fact.joint j on j.hull_id = at.hull_id and ${standing('j')}
  join fact.part q on q.id = j.part_id
  join derived.place_source s on s.part_id = j.part_id and s.source_id is not null and s.first_at < at.origin + 1
  join derived.place_role t on t.place_id = s.place_id and t.role = s.role
  join fact.lot l on l.root = s.source_id and ${standing('l')}
  left join fact.material m on m.root = l.material_id and ${standing('m')}
  left join fact.layer_record r on s.into_kind = 'layer' and r.root = s.place_id and ${standing('r')}
  left join fact.schedule_layer y on y.id = r.schedule_layer_id
  group by 1, 2, 3, 4, 5 order by 4, 1, 5`;

type Row = Omit<LotInHulls, 'hulls' | 'shares'> & { readonly place: string; readonly share: number };

/** The lots of hulls, by family and code; places are those of the ids given, from 0. */
export const loadLots = async (
  tx: EntityManager,
  ids: readonly string[],
  origins: readonly string[],
): Promise<readonly LotInHulls[]> => {
  const found = new Map<string, LotInHulls & { readonly hulls: number[]; readonly shares: number[] }>();
  for (const { place, share, ...lot } of await tx.query<Row[]>(LOTS, [ids, origins])) {
    const key = JSON.stringify([lot.family, lot.lot]);
    const own = found.get(key) ?? { ...lot, hulls: [], shares: [] };
    own.hulls.push(Number(place) - 1);
    own.shares.push(Math.min(1, share));
    found.set(key, own);
  }
  return [...found.values()];
};
