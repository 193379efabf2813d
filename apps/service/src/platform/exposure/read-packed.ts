import { to as copyTo } from 'pg-copy-streams';
import type pg from 'pg';
import type { EntityManager } from 'typeorm';
import { readBinaryRows } from './binary-rows.js';
import { isOneAlone, longStepAt } from './numbers.js';
import { standing } from '../facts/standing.js';
import { isStale, NOTHING_PACKED } from './stale.sql.js';

/**
 * A lot in one kind of layer, with what is packed as the database sent it: a plant of twenty years has tens of megabytes of
 * it, which to copy takes as long as to read.
 */
export interface PackedLot {
  readonly lot: string;
  readonly supplierLot: string | null;
  readonly material: string | null;
  readonly family: string;
  /** Numbers of parts, as `Numbers` reads them. */
  readonly parts: Uint8Array;
  /** The share of like material in every part, in parts of 1e9; null where they differ. */
  readonly share: number | null;
  /** Shares part by part, as `Numbers` reads them; null where all are one. */
  readonly shares: Uint8Array | null;
  /** The last day on which it was first put into one of these parts, days since 1970. */
  readonly lastDay: number;
  /** The day for each part, as `Numbers` reads them; null where it was not read. */
  readonly days: Uint8Array | null;
}

/** Whether a lot was taken as it is, or its days are needed to tell which hulls have it. */
export type Taken = 'taken' | 'needs days';

/** SQL: a lot with its names as the alias `l`, for a source. */
export const NAMED = `join fact.lot l on l.root = x.source_id and ${standing('l')}
  left join fact.material m on m.root = l.material_id and ${standing('m')}`;

const FAMILY = "x.role || ' in ' || x.kind || ', ' || x.into_what";

/** Copied out as bytes: read as text, a byte would be two characters, and the whole twice as long to send and to read. */
const copied = (days: string, which: string): string => `
  copy (
    select l.code, l.supplier_lot, m.name, ${FAMILY}, x.ctid::text, x.parts, x.shares, int4send(x.last_day), ${days}
    from derived.exposure x ${NAMED} where ${which}
  ) to stdout (format binary)`;

const WITHOUT_DAYS = copied('null', `not ${NOTHING_PACKED} and not ${isStale('x.source_id')}`);

/** SQL: rows by where they lie, which is where they lay as long as the instant of the transaction is read. */
const withDays = (places: readonly string[]): string =>
  copied('x.days', `x.ctid = any('{${places.map((place) => `"${place}"`).join(',')}}'::tid[])`);

/**
 * Reads what is packed and not out of date, lot by lot, in no order; days of those alone that need them, afterwards. In the
 * transaction of its caller, whose instant tells what is out of date.
 *
 * @param each is told every lot, and those that need their days once more; its numbers are there only as long as it is told
 * @throws what the database refuses
 */
export const readPacked = async (tx: EntityManager, each: (lot: PackedLot) => Taken): Promise<void> => {
  const client = (await tx.queryRunner?.connect()) as pg.PoolClient;
  const read = async (sql: string): Promise<readonly string[]> => {
    const places: string[] = [];
    await readBinaryRows(client.query(copyTo(sql)), (row) => {
      const shares = row.octets(6);
      const one = isOneAlone(shares);
      const taken = each({
        lot: row.text(0) ?? '',
        supplierLot: row.text(1),
        material: row.text(2),
        family: row.text(3) ?? '',
        parts: row.octets(5),
        share: one ? longStepAt(shares, 1) : null,
        shares: one ? null : shares,
        lastDay: row.int32(7),
        days: row.size(8) === 0 ? null : row.octets(8),
      });
      if (taken === 'needs days') places.push(row.text(4) ?? '');
    });
    return places;
  };
  const places = await read(WITHOUT_DAYS);
  if (places.length > 0) await read(withDays(places));
};
