import { Injectable } from '@nestjs/common';
import { Readable } from 'node:stream';
import { DataSource } from 'typeorm';
import type { ReachedHull, ReachPage, ReachQuery } from '@hull-record/contracts';
import { readCursor, toPage } from '../platform/http/cursor.js';
import { findLot } from './find-lot.js';
import { placesOfMadeLot, type ReachedPlace } from './places-of-made-lot.js';
import { reachedHulls, REACH_GIVEN, REACH_OF_SOURCE } from './reach.sql.js';

type Asked = Omit<ReachQuery, 'limit'>;
type Row = ReachedHull & { readonly key: string };

/** Which hulls hold some of a lot, through buckets, tank heels, kits, joints and repairs. */
@Injectable()
export class LotHulls {
  constructor(private readonly db: DataSource) {}

  async page(lot: string, query: ReachQuery): Promise<ReachPage> {
    const { sql, parameters } = await this.statement(lot, query, query.limit + 1);
    const rows = await this.db.query<Row[]>(sql, parameters);
    const page = toPage(rows, query.limit, (row) => [row.key]);
    return { ...page, items: page.items.map(withoutKey) };
  }

  /** All of it, one JSON object a line, as the database gives it. */
  async stream(lot: string, query: Asked): Promise<Readable> {
    const { sql, parameters } = await this.statement(lot, query, null);
    const runner = this.db.createQueryRunner();
    const release = (): void => void runner.release();
    const rows = await runner.stream(sql, parameters, release, release);
    return Readable.from(lines(rows as AsyncIterable<Row>));
  }

  private async statement(
    lot: string,
    query: Asked,
    limit: number | null,
  ): Promise<{ sql: string; parameters: unknown[] }> {
    const asked = await findLot(this.db.manager, lot);
    const [after] = readCursor(query.cursor, 1);
    const parameters = [asked.id, query.minShare, query.belowFloor === 'members only', after, limit];
    if (asked.received) return { sql: reachedHulls(REACH_OF_SOURCE), parameters };
    const places = await placesOfMadeLot(this.db.manager, asked.id);
    return { sql: reachedHulls(REACH_GIVEN), parameters: [...parameters, ...columns(places)] };
  }
}

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

async function* lines(rows: AsyncIterable<Row>): AsyncGenerator<string> {
  for await (const row of rows) yield `${JSON.stringify(withoutKey(row))}\n`;
}
