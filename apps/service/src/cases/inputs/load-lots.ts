import type { EntityManager } from 'typeorm';
import { MEMORY } from '../../platform/database/memory.sql.js';
import { readPacked } from '../../platform/exposure/read-packed.js';
import { LEAST_PACKED } from '../../platform/exposure/renew-exposure.js';
import { DAY, INTO_WHAT, ITS_PLACE, PARTS_OF_WHOLE, SHARE } from '../../platform/exposure/share.sql.js';
import { NOTHING_PACKED } from '../../platform/exposure/stale.sql.js';
import { standing } from '../../platform/facts/standing.js';
import type { LotInHulls } from './case-inputs.js';
import { HullsOfLots } from './hulls-of-lots.js';
import type { JudgedHulls } from './judge-hulls.js';
import { Room } from './room.js';

/** How the lots of a case are read: as they are packed, and from places what is not packed or out of date. */
type From = 'packed' | 'places';

/**
 * Each received lot in each kind of layer of the hulls, with its largest share of like material there; from what was put in
 * before the time origin alone: what a repair brought afterwards cannot have led to it, and would seem to. Shares below
 * `least` are left out: nothing is said of them.
 *
 * Ordered by family and code; the hulls of a lot by place.
 *
 * @param how `from` 'places' reads nothing that is packed: the same answer, slowly. `room` is where lists are kept: leave it
 * when they are done with, and the next look is quicker
 */
export const loadLots = async (
  tx: EntityManager,
  { ids, origins, parts }: Pick<JudgedHulls, 'ids' | 'origins' | 'parts'>,
  least: number,
  { from = 'packed', room = new Room() }: { readonly from?: From; readonly room?: Room } = {},
): Promise<readonly LotInHulls[]> => {
  const hulls = new HullsOfLots(parts, origins, Math.round(least * PARTS_OF_WHOLE), room);
  const lots: LotInHulls[] = [];
  const usesPacked = from === 'packed' && least >= LEAST_PACKED;
  if (usesPacked)
    await readPacked(tx, (packed) => {
      const lot = hulls.ofPacked(packed);
      if (lot === 'needs days') return lot;
      if (lot) lots.push(lot);
      return 'taken';
    });
  lots.push(...(await fromPlaces(tx, { ids, origins, least, alone: usesPacked })));
  return lots.sort((a, b) => compare(a.family, b.family) || compare(a.lot, b.lot));
};

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** SQL: sources that are not packed, or not as they are now; null as long as nothing was packed, which is all of them. */
const STALE = `select case when ${NOTHING_PACKED} then null
  else array(select distinct source_id from derived.stale_exposure) end as sources`;

const placesOf = (which: string): string => `
  with boats as materialized (
    select at.hull_id, at.origin, at.place::int as place
    from unnest($1::uuid[], $2::int[]) with ordinality as at(hull_id, origin, place)),
  pieces as materialized (
    select q.id as part_id, q.kind, b.place, b.origin
    from boats b join fact.joint j on j.hull_id = b.hull_id and ${standing('j')} join fact.part q on q.id = j.part_id),
  shares as (
    select s.source_id, s.role, p.kind, ${INTO_WHAT} as into_what, p.place, max(${SHARE}) as share
    from pieces p join derived.place_source s on s.part_id = p.part_id ${ITS_PLACE}
    where ${which} and ${DAY} <= p.origin and ${SHARE} >= $3
    group by 1, 2, 3, 4, 5),
  packed as (
    select source_id, role || ' in ' || kind || ', ' || into_what as family,
      string_agg(place || ' ' || share, ' ' order by place) as hulls
    from shares group by source_id, role, kind, into_what)
  select l.code as lot, l.supplier_lot as "supplierLot", m.name as material, k.family, k.hulls
  from packed k join fact.lot l on l.root = k.source_id and ${standing('l')}
  left join fact.material m on m.root = l.material_id and ${standing('m')}`;

const ALL = placesOf('s.source_id is not null');
const SOME = placesOf('s.source_id = any($4)');

type Row = Omit<LotInHulls, 'hulls' | 'shares'> & { readonly hulls: string };

interface Asked extends Pick<JudgedHulls, 'ids' | 'origins'> {
  readonly least: number;
  /** Of what is not packed alone. */
  readonly alone: boolean;
}

const fromPlaces = async (tx: EntityManager, { ids, origins, least, alone }: Asked): Promise<LotInHulls[]> => {
  const [stale] = alone ? await tx.query<{ sources: string[] | null }[]>(STALE) : [{ sources: null }];
  const sources = stale?.sources ?? null;
  if (sources?.length === 0) return [];
  await tx.query(MEMORY);
  const asked = [ids, origins, Math.round(least * PARTS_OF_WHOLE)];
  const rows = await tx.query<Row[]>(sources ? SOME : ALL, sources ? [...asked, sources] : asked);
  return rows.map(({ hulls, ...lot }) => {
    const told = hulls.split(' ').map(Number);
    return {
      ...lot,
      hulls: Uint32Array.from(
        told.filter((_, i) => i % 2 === 0),
        (place) => place - 1,
      ),
      shares: Float64Array.from(
        told.filter((_, i) => i % 2 === 1),
        (share) => Math.min(1, share / PARTS_OF_WHOLE),
      ),
    };
  });
};
