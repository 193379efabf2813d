import type { EntityManager } from 'typeorm';
import { standing } from '../../platform/facts/standing.js';
import type { LotInHulls } from './case-inputs.js';

/**
 * Each received lot in each kind of layer of the hulls, with its largest share of like material there; from what was put in
 * before the time origin alone: what a repair brought afterwards cannot have led to it, and would seem to.
 *
 * Hulls of a lot come as one row, places and shares packed as the numbers they are: as a row each, they would be twenty
 * million objects for a large plant, on the thread that others wait for. They are put in order of places once, by one
 * number, and gathered by hashing. Shares below `least` are left out: nothing is said of them.
 */
const LOTS = `
  with boats as materialized (
    select at.hull_id, at.origin, at.place::int as place
    from unnest($1::uuid[], $2::date[]) with ordinality as at(hull_id, origin, place)),
  pieces as materialized (
    select q.id as part_id, q.kind, b.place, b.origin
    from boats b join fact.joint j on j.hull_id = b.hull_id and ${standing('j')} join fact.part q on q.id = j.part_id),
  shares as (
    select s.source_id, s.role, p.kind, coalesce(y.name, s.into_kind) as into_what, p.place, max(s.kg / t.kg) as share
    from pieces p
    join derived.place_source s on s.part_id = p.part_id and s.source_id is not null and s.first_at < p.origin + 1
    join derived.place_role t on t.place_id = s.place_id and t.role = s.role
    left join fact.layer_record r on s.into_kind = 'layer' and r.root = s.place_id and ${standing('r')}
    left join fact.schedule_layer y on y.id = r.schedule_layer_id
    group by 1, 2, 3, 4, 5 having max(s.kg / t.kg) >= $3),
  packed as (
    select source_id, role || ' in ' || kind || ', ' || into_what as family,
      string_agg(int4send(place), '') as places, string_agg(float8send(share), '') as shares
    from (select * from shares order by place) in_order group by source_id, role, kind, into_what)
  select l.code as lot, l.supplier_lot as "supplierLot", m.name as material, k.family, k.places, k.shares
  from packed k join fact.lot l on l.root = k.source_id and ${standing('l')}
  left join fact.material m on m.root = l.material_id and ${standing('m')}
  order by k.family, l.code`;

type Row = Omit<LotInHulls, 'hulls' | 'shares'> & { readonly places: Buffer; readonly shares: Buffer };

/** The lots of hulls, by family and code, with shares from `least` on; places are those of the ids given, from 0. */
export const loadLots = async (
  tx: EntityManager,
  ids: readonly string[],
  origins: readonly string[],
  least: number,
): Promise<readonly LotInHulls[]> => {
  await tx.query(MEMORY);
  const rows = await tx.query<Row[]>(LOTS, [ids, origins, least]);
  return rows.map(({ places, shares, ...lot }) => ({ ...lot, ...unpacked(places, shares) }));
};

/** In the transaction of the look alone: with the usual few megabytes it would sort on the disk. */
const MEMORY = "select set_config('work_mem', '256MB', true)";

/** Numbers of the database's order of bytes; put in order of places, should the database not have kept to it. */
const unpacked = (places: Buffer, shares: Buffer): Pick<LotInHulls, 'hulls' | 'shares'> => {
  const hulls = Array.from({ length: places.length / 4 }, (_, i) => places.readInt32BE(4 * i) - 1);
  const own = Array.from({ length: shares.length / 8 }, (_, i) => Math.min(1, shares.readDoubleBE(8 * i)));
  if (hulls.every((hull, i) => i === 0 || hull > (hulls[i - 1] as number))) return { hulls, shares: own };
  const order = [...hulls.keys()].sort((a, b) => (hulls[a] as number) - (hulls[b] as number));
  return { hulls: order.map((i) => hulls[i] as number), shares: order.map((i) => own[i] as number) };
};
