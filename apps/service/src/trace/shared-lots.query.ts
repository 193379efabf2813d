import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { readAsOne } from '../platform/database/read-as-one.js';
import type { AskSharedLots, SharedLot, SharedLotsPage } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { readCursor, toPage } from '../platform/http/cursor.js';
import { findHulls } from '../platform/lookups/find-hull.js';
import { recomputingAny } from '../platform/recompute/recomputing.js';
import { InvalidRequest } from '../platform/refusals.js';
import { possiblyAnyOf } from './possibly-any-of.js';

/**
 * SQL: lots of hulls `$1` with how many of these and of all others hold each, at a layer share of at least `$2`.
 * The most shared first; among those, the rarest elsewhere first.
 */
const SHARED = `
  with mine as (
    select distinct s.source_id from fact.joint j
    join derived.place_source s on s.part_id = j.part_id
    where j.hull_id = any($1) and s.source_id is not null and ${standing('j')}
  ),
  held as (
    select s.source_id, s.role, j.hull_id, max(s.kg / t.kg) as share
    from mine m
    join derived.place_source s on s.source_id = m.source_id
    join derived.place_role t on t.place_id = s.place_id and t.role = s.role
    join fact.joint j on j.part_id = s.part_id and ${standing('j')}
    group by s.source_id, s.role, j.hull_id having max(s.kg / t.kg) >= $2
  ),
  counted as (
    select source_id, role, (count(*) filter (where hull_id = any($1)))::int as these,
      (count(*) filter (where hull_id <> all($1)))::int as others
    from held group by source_id, role
  )
  select l.code as lot, l.root as "lotId", l.supplier, l.supplier_lot as "supplierLot", m.name as material, c.role,
    c.these as "ofThese", c.others as "ofOthers"
  from counted c
  join fact.lot l on l.root = c.source_id and ${standing('l')}
  left join fact.material m on m.root = l.material_id and ${standing('m')}
  where c.these > 0 and ($3::int is null or (-c.these, c.others, l.code, l.root, c.role) > (-$3, $4::int, $5::text, $6::uuid, $7::text))
  order by c.these desc, c.others, l.code, l.root, c.role limit $8`;

/** Which lots some hulls share, with how many of these and how many other hulls hold each. */
@Injectable()
export class SharedLots {
  constructor(private readonly db: DataSource) {}

  run(ask: AskSharedLots): Promise<SharedLotsPage> {
    return readAsOne(this.db, (tx) => this.read(tx, ask));
  }

  private async read(tx: EntityManager, ask: AskSharedLots): Promise<SharedLotsPage> {
    const hulls = await findHulls(tx, ask.hulls);
    const missing = ask.hulls.flatMap((number, i) =>
      hulls.has(number) ? [] : [{ pointer: `/hulls/${i}`, detail: `There is no hull ${number}.` }],
    );
    if (missing.length > 0) throw new InvalidRequest(missing);
    const after = readCursor(ask.cursor, 5);
    const rows = await tx.query<Omit<SharedLot, 'possiblyAnyOf'>[]>(SHARED, [
      [...new Set(hulls.values())],
      ask.minShare,
      ...after,
      ask.limit + 1,
    ]);
    const possibly = await possiblyAnyOf(
      tx,
      rows.map((row) => row.lotId),
    );
    const told = rows.map((row) => ({ ...row, possiblyAnyOf: possibly.get(row.lotId) ?? null }));
    const page = toPage(told, ask.limit, (row) => [row.ofThese, row.ofOthers, row.lot, row.lotId, row.role]);
    // Every hull of the plant is counted among the others.
    return { ...page, recomputing: await recomputingAny(tx) };
  }
}
