import { to as copyTo } from 'pg-copy-streams';
import type pg from 'pg';
import type { EntityManager } from 'typeorm';
import { readBinaryRows } from './binary-rows.js';
import { standing } from '../facts/standing.js';
import { isStale, NOTHING_PACKED } from './stale.sql.js';

/**
 * A lot in one kind of layer: numbers of parts, rising, days since 1970 and shares in parts of 1e9, one or as many; integers
 * of four bytes, the highest first. They are as the database sent them: a plant of twenty years has 160 MB of them, which to
 * copy takes as long as to read.
 */
export interface PackedLot {
  readonly lot: string;
  readonly supplierLot: string | null;
  readonly material: string | null;
  readonly family: string;
  readonly parts: DataView;
  readonly days: DataView;
  readonly shares: DataView;
}

/** SQL: a lot with its names as the alias `l`, for a source. */
export const NAMED = `join fact.lot l on l.root = x.source_id and ${standing('l')}
  left join fact.material m on m.root = l.material_id and ${standing('m')}`;

/** Copied out as bytes: read as text, a byte would be two characters, and the whole twice as long to send and to read. */
const PACKED = `
  copy (
    select l.code, l.supplier_lot, m.name, x.role || ' in ' || x.kind || ', ' || x.into_what, x.parts, x.days, x.shares
    from derived.exposure x ${NAMED}
    where not ${NOTHING_PACKED} and not ${isStale('x.source_id')}
  ) to stdout (format binary)`;

/**
 * Reads what is packed and not out of date, lot by lot, in no order. In the transaction of its caller, whose instant tells
 * what is out of date.
 *
 * @param each is told every lot; its numbers are there only as long as it is told
 * @throws what the database refuses
 */
export const readPacked = async (tx: EntityManager, each: (lot: PackedLot) => void): Promise<void> => {
  const client = (await tx.queryRunner?.connect()) as pg.PoolClient;
  await readBinaryRows(client.query(copyTo(PACKED)), (row) =>
    each({
      lot: row.text(0) ?? '',
      supplierLot: row.text(1),
      material: row.text(2),
      family: row.text(3) ?? '',
      parts: row.view(4),
      days: row.view(5),
      shares: row.view(6),
    }),
  );
};
