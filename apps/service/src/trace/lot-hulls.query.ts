import { Injectable } from '@nestjs/common';
import { Readable } from 'node:stream';
import { DataSource, type EntityManager } from 'typeorm';
import type { ReachedHull, ReachPage, ReachQuery, Recomputing } from '@hull-record/contracts';
import { readAsOne } from '../platform/database/read-as-one.js';
import { readCursor, toPage } from '../platform/http/cursor.js';
import { correctedSince, seenNow, type Seen } from '../platform/facts/corrected-since.js';
import { recomputingDownstream } from '../platform/recompute/recomputing.js';
import { findLot } from './find-lot.js';
import { placesOfMadeLot, type ReachedPlace } from './places-of-made-lot.js';
import { reachedHulls, REACH_GIVEN, REACH_OF_SOURCE } from './reach.sql.js';

/** Hulls that are read at once for a stream. */
const STREAMED_AT_ONCE = 1_000;

type Asked = Omit<ReachQuery, 'limit'>;
type Row = ReachedHull & { readonly key: string };

/** Which hulls hold some of a lot, through buckets, tank heels, kits, joints and repairs. */
@Injectable()
export class LotHulls {
  constructor(private readonly db: DataSource) {}

  async page(lot: string, query: ReachQuery): Promise<ReachPage> {
    const after = readCursor(query.cursor, 1)[0] ?? null;
    return readAsOne(this.db, async (tx) => {
      const asked = await ask(tx, lot, query);
      const page = await readPage(tx, asked, after, query.limit);
      return { ...page, items: page.items.map(withoutKey), recomputing: await recomputingDownstream(tx, asked.lot) };
    });
  }

  /**
   * All of it, one JSON object a line. Read page by page: a client that is slow, or hangs up, holds no connection. When
   * the past was corrected between two pages a last line says so, since hulls before it are as they were and those after
   * as they are.
   */
  async stream(lot: string, query: Asked, atOnce = STREAMED_AT_ONCE): Promise<Readable> {
    const page = (after: Key): Promise<SeenPage> =>
      readAsOne(this.db, async (tx) => {
        const asked = await ask(tx, lot, query);
        const recomputing = await recomputingDownstream(tx, asked.lot);
        return { ...(await readPage(tx, asked, after, atOnce)), recomputing, seen: await seenNow(tx) };
      });
    return Readable.from(lines(await page(null), page, (seen) => correctedSince(this.db.manager, seen)));
  }
}

/** A question in SQL; its parameters without the key and limit of a page, which stand fourth and fifth. */
interface Statement {
  /** Id of the lot that is asked for. */
  readonly lot: string;
  readonly sql: string;
  readonly parameters: readonly unknown[];
}

type Key = string | number | null;
type Page = { items: Row[]; next: string | null };
type SeenPage = Page & { readonly seen: Seen; readonly recomputing: Recomputing | null };

const ask = async (tx: EntityManager, lot: string, query: Asked): Promise<Statement> => {
  const asked = await findLot(tx, lot);
  const parameters = [asked.id, query.minShare, query.belowFloor === 'members only'];
  if (asked.received) return { lot: asked.id, sql: reachedHulls(REACH_OF_SOURCE), parameters };
  const places = await placesOfMadeLot(tx, asked.id);
  return { lot: asked.id, sql: reachedHulls(REACH_GIVEN), parameters: [...parameters, ...columns(places)] };
};

const readPage = async (
  tx: EntityManager,
  { sql, parameters }: Statement,
  after: Key,
  limit: number,
): Promise<Page> => {
  const given = [...parameters.slice(0, 3), after, limit + 1, ...parameters.slice(3)];
  return toPage(await tx.query<Row[]>(sql, given), limit, (row) => [row.key]);
};

const columns = (places: readonly ReachedPlace[]): unknown[][] => [
  places.map(({ placeId }) => placeId),
  places.map(({ partId }) => partId),
  places.map(({ intoKind }) => intoKind),
  places.map(({ role }) => role),
  places.map(({ kg }) => kg),
  places.map(({ basis }) => basis),
  places.map(({ firstAt }) => firstAt),
  places.map(({ lastAt }) => lastAt),
];

const withoutKey = ({ key: _key, ...hull }: Row): ReachedHull => hull;

const CORRECTED = { corrected: 'The past was corrected while this was read: ask again for all of it as it is now.' };

async function* lines(
  first: SeenPage,
  read: (after: Key) => Promise<SeenPage>,
  correctedSince: (seen: Seen) => Promise<boolean>,
): AsyncGenerator<string> {
  let recomputing = first.recomputing;
  for (let page = first; ; page = await read(page.items.at(-1)?.key ?? null)) {
    recomputing ??= page.recomputing;
    for (const row of page.items) yield `${JSON.stringify(withoutKey(row))}\n`;
    if (page.next === null) break;
  }
  if (first.next !== null && (await correctedSince(first.seen))) yield `${JSON.stringify(CORRECTED)}\n`;
  if (recomputing) yield `${JSON.stringify({ recomputing })}\n`;
}
