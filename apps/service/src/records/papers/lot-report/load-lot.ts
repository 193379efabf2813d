import type { EntityManager } from 'typeorm';
import type { LotView } from '@hull-record/contracts';
import type { Portion } from '@hull-record/genealogy';
import { holdKindsOf } from '../../../platform/store/holds.sql.js';
import { standing } from '../../../platform/facts/standing.js';
import { uuidOrNull } from '../../../platform/lookups/uuid-or-null.js';
import { CANDIDATES } from '../../../platform/lots/candidates.sql.js';
import { stateOrDefault } from '../../../platform/lots/find-lots.js';
import { NotThere } from '../../../platform/refusals.js';
import { expiryAt } from '../../../platform/store/holds.sql.js';
import { NOW } from '../../../platform/views/making.js';
import type { NonconformityRow } from '../../../platform/views/faults.js';

/** A lot as its report says what it is; days as YYYY-MM-DD. */
export interface LotRow {
  readonly id: string;
  /** Id of the version that stands. */
  readonly version: string;
  readonly code: string;
  readonly origin: LotView['origin'];
  readonly material: string | null;
  readonly material_name: string | null;
  readonly role: string | null;
  readonly supplier: string | null;
  readonly supplier_lot: string | null;
  readonly quantity: string;
  readonly unit: string;
  readonly basis: string;
  readonly kg: number;
  readonly made_on: string | null;
  readonly expires_on: string | null;
  readonly state: string;
  readonly certificate: LotView['certificate'];
  readonly certified: LotView['certified'];
  readonly tank: string | null;
  readonly looks: string | null;
  readonly found_at: string | null;
  readonly by: string;
  readonly happened_at: Date;
}

const LOT = `
  select l.root as id, l.id as version, l.code, l.origin, m.code as material, m.name as material_name, coalesce(m.role, l.role) as role,
    l.supplier, l.supplier_lot, l.quantity::text, l.unit, l.basis, l.kg, l.made_on::text, ${expiryAt('l', `'${NOW}'`)}::text as expires_on,
    ${stateOrDefault('l', `'${NOW}'`)} as state, l.certificate, l.certified, t.code as tank, l.looks, l.found_at, w.badge as by, l.happened_at
  from fact.lot l
  join fact.journal e on e.id = l.entry_id join fact.person w on w.id = e.person_id
  left join fact.tank t on t.id = l.tank_id
  left join fact.material m on m.root = coalesce(l.material_id, t.material_id) and ${standing('m')}
  where (l.code = $1 or l.root = ${uuidOrNull('$1::text')}) and ${standing('l')} order by l.recorded_at limit 1`;

/** @throws NotThere */
export const loadLot = async (tx: EntityManager, name: string): Promise<LotRow> => {
  const [lot] = await tx.query<LotRow[]>(LOT, [name]);
  if (!lot) throw new NotThere('lot', name);
  return lot;
};

/** Something that was said of a lot. */
export interface LotEventRow {
  readonly what: string;
  readonly why: string;
  readonly by: string;
  readonly happened_at: Date;
}

const event = (what: string, why: string, from: string): string =>
  `select ${what} as what, ${why} as why, x.entry_id, x.id, x.happened_at, x.recorded_at from ${from} and ${standing('x')}`;
const label = (id: string): string =>
  `coalesce(', container ' || (select c.label from fact.container c where c.id = ${id}), '')`;

const EVENTS = `
  select v.what, v.why, w.badge as by, v.happened_at from (
    ${[
      event('x.state', 'x.reason', 'fact.lot_state x where x.lot_id = $1'),
      event(`'hold for ' || x.kind || ${label('x.container_id')}`, 'x.reason', 'fact.hold x where x.lot_id = $1'),
      event(
        `'hold for ' || h.kind || ' lifted' || ${label('h.container_id')}`,
        'x.reason',
        'fact.hold_lift x join fact.hold h on h.root = x.hold_id where h.lot_id = $1',
      ),
      event(`'tested again, last day of use ' || x.expires_on`, 'x.result', 'fact.lot_retest x where x.lot_id = $1'),
      event(
        `'counted, ' || x.quantity || ' ' || x.unit || ${label('x.container_id')}`,
        `coalesce(x.note, '')`,
        'fact.lot_count x where x.lot_id = $1',
      ),
      event(`x.what || ', ' || x.quantity || ' ' || x.unit`, 'x.reason', 'fact.lot_loss x where x.lot_id = $1'),
    ].join(' union all ')}) v
  join fact.journal e on e.id = v.entry_id join fact.person w on w.id = e.person_id
  order by v.happened_at, v.recorded_at, v.id`;

/** Kinds of the holds in force on all of a lot. */
export const loadHoldsOfLot = async (tx: EntityManager, lotId: string): Promise<readonly string[]> => {
  const [{ holds }] = await tx.query<[{ holds: string[] }]>(`select ${holdKindsOf('$1', 'now()')} as holds`, [lotId]);
  return holds;
};

/** States, holds, retests, counts and losses of a lot, the oldest first. */
export const loadLotEvents = (tx: EntityManager, lotId: string): Promise<LotEventRow[]> => tx.query(EVENTS, [lotId]);

/** A received lot behind a lot, with its share of the mass; null names are of the remainder that is not told apart. */
export interface SourceRow {
  readonly code: string | null;
  readonly supplierLot: string | null;
  readonly material: string | null;
  readonly role: string;
  readonly fraction: number;
}

/** Names the received lots of a composition, the largest share first. */
export const loadSources = async (tx: EntityManager, portions: readonly Portion[]): Promise<readonly SourceRow[]> => {
  const rows = await tx.query<{ root: string; code: string; supplierLot: string | null; material: string | null }[]>(
    `select l.root, l.code, l.supplier_lot as "supplierLot", m.name as material from fact.lot l
     left join fact.material m on m.root = l.material_id and ${standing('m')} where l.root = any($1) and ${standing('l')}`,
    [portions.flatMap(({ source }) => source ?? [])],
  );
  const named = new Map(rows.map((row) => [row.root, row]));
  return portions
    .map(({ source, role, fraction }) => {
      const row = source === null ? undefined : named.get(source);
      return {
        code: row?.code ?? null,
        supplierLot: row?.supplierLot ?? null,
        material: row?.material ?? null,
        role,
        fraction,
      };
    })
    .sort((a, b) => b.fraction - a.fraction || ((a.code ?? '') < (b.code ?? '') ? -1 : 1));
};

/** A lot that this one went into. */
export interface LotMadeRow {
  readonly code: string;
  readonly origin: string;
  readonly quantity: string;
  readonly unit: string;
  readonly basis: string;
  readonly kg: number;
  readonly happened_at: Date;
}

/** Buckets, kits and tank fills that a lot went into, the oldest first. */
export const loadLotsMade = (tx: EntityManager, lotId: string): Promise<LotMadeRow[]> =>
  tx.query(
    `select l.code, l.origin, i.quantity::text, i.unit, i.basis, i.kg, i.happened_at
     from fact.lot_input i join fact.lot l on l.root = i.lot_id and ${standing('l')}
     where i.input_id = $1 and ${standing('i')} order by i.happened_at, l.code, i.id`,
    [lotId],
  );

/** Nonconformities of the lot itself. */
export const loadLotNonconformities = (tx: EntityManager, lotId: string): Promise<NonconformityRow[]> =>
  tx.query(
    `select c.root as id, c.part_id, c.rule, c.detail, c.happened_at, null as disposition, null as concession, null as go_on
     from fact.nonconformity c where c.about_id = $1 and ${standing('c')} order by c.happened_at, c.rule, c.detail, c.root`,
    [lotId],
  );

/** Lots that nobody could name, and that may be of this lot or of one made of it. */
export const loadUnidentified = (tx: EntityManager, lotId: string): Promise<{ code: string; looks: string | null }[]> =>
  tx.query(
    `with recursive down(id) as (
       select $1::uuid
       union select i.lot_id from down join fact.lot_input i on i.input_id = down.id and ${standing('i')})
     select distinct l.code, l.looks from down
     cross join lateral (select c.lot_id from (${CANDIDATES}) c where c.candidate_id = down.id) c
     join fact.lot l on l.root = c.lot_id and ${standing('l')} order by l.code`,
    [lotId],
  );
