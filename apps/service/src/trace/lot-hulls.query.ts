import { Injectable } from '@nestjs/common';
import { Readable } from 'node:stream';
import { DataSource } from 'typeorm';
import type { ReachedHull, ReachPage, ReachQuery } from '@hull-record/contracts';
import { readCursor, toPage } from '../platform/http/cursor.js';
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
    const page = await this.pages(
      await this.statement(lot, query),
      query.limit,
    )(readCursor(query.cursor, 1)[0] ?? null);
    return { ...page, items: page.items.map(withoutKey) };
  }

  /**
   * All of it, one JSON object a line. Read page by page: a client that is slow, or hangs up, holds no connection.
   */
  async stream(lot: string, query: Asked): Promise<Readable> {
    const read = this.pages(await this.statement(lot, query), STREAMED_AT_ONCE);
    const first = await read(null);
    return Readable.from(lines(first, read));
  }

  private pages({ sql, parameters }: Statement, limit: number): ReadPage {
    return async (after) => {
      const rows = await this.db.query<Row[]>(sql, [
        ...parameters.slice(0, 3),
        after,
        limit + 1,
        ...parameters.slice(3),
      ]);
      return toPage(rows, limit, (row) => [row.key]);
    };
  }

  private async statement(lot: string, query: Asked): Promise<Statement> {
    const asked = await findLot(this.db.manager, lot);
    const parameters = [asked.id, query.minShare, query.belowFloor === 'members only'];
    if (asked.received) return { sql: reachedHulls(REACH_OF_SOURCE), parameters };
    const places = await placesOfMadeLot(this.db.manager, asked.id);
    return { sql: reachedHulls(REACH_GIVEN), parameters: [...parameters, ...columns(places)] };
  }
}

/** A question in SQL; its parameters without the key and limit of a page, which stand fourth and fifth. */
interface Statement {
  readonly sql: string;
  readonly parameters: readonly unknown[];
}

type Page = { readonly items: readonly Row[]; readonly next: string | null };
type ReadPage = (after: string | number | null) => Promise<{ items: Row[]; next: string | null }>;

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

async function* lines(first: Page, read: ReadPage): AsyncGenerator<string> {
  for (let page = first; ; page = await read(page.items.at(-1)?.key ?? null)) {
    for (const row of page.items) yield `${JSON.stringify(withoutKey(row))}\n`;
    if (page.next === null) return;
  }
}
