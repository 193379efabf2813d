import { Injectable } from '@nestjs/common';
import { Readable } from 'node:stream';
import { DataSource } from 'typeorm';
import type { ReachedHull, ReachPage, ReachQuery, Recomputing } from '@hull-record/contracts';
import { readAsOne } from '../platform/database/read-as-one.js';
import { readCursor } from '../platform/http/cursor.js';
import { correctedSince, seenNow, type Seen } from '../platform/facts/corrected-since.js';
import { recomputingDownstream } from '../platform/recompute/recomputing.js';
import { askReach, readReach, type ReachKey, type ReachRow, type ReachRows } from '../platform/reach/ask-reach.js';

/** Hulls that are read at once for a stream. */
const STREAMED_AT_ONCE = 1_000;

type Asked = Omit<ReachQuery, 'limit'>;

/** Which hulls hold some of a lot, through buckets, tank heels, kits, joints and repairs. */
@Injectable()
export class LotHulls {
  constructor(private readonly db: DataSource) {}

  async page(lot: string, query: ReachQuery): Promise<ReachPage> {
    const after = readCursor(query.cursor, 1)[0] ?? null;
    return readAsOne(this.db, async (tx) => {
      const asked = await askReach(tx, lot, query);
      const page = await readReach(tx, asked, after, query.limit);
      return { ...page, items: page.items.map(withoutKey), recomputing: await recomputingDownstream(tx, asked.lot) };
    });
  }

  /**
   * All of it, one JSON object a line. Read page by page: a client that is slow, or hangs up, holds no connection. When
   * the past was corrected between two pages a last line says so, since hulls before it are as they were and those after
   * as they are.
   */
  async stream(lot: string, query: Asked, atOnce = STREAMED_AT_ONCE): Promise<Readable> {
    const page = (after: ReachKey): Promise<SeenPage> =>
      readAsOne(this.db, async (tx) => {
        const asked = await askReach(tx, lot, query);
        const recomputing = await recomputingDownstream(tx, asked.lot);
        return { ...(await readReach(tx, asked, after, atOnce)), recomputing, seen: await seenNow(tx) };
      });
    return Readable.from(lines(await page(null), page, (seen) => correctedSince(this.db.manager, seen)));
  }
}

type SeenPage = ReachRows & { readonly seen: Seen; readonly recomputing: Recomputing | null };

const withoutKey = ({ key: _key, ...hull }: ReachRow): ReachedHull => hull;

const CORRECTED = { corrected: 'The past was corrected while this was read: ask again for all of it as it is now.' };

async function* lines(
  first: SeenPage,
  read: (after: ReachKey) => Promise<SeenPage>,
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
