import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { HeldHull, HeldHullPage, HeldHullsQuery } from '@hull-record/contracts';
import { readAsOne } from '../platform/database/read-as-one.js';
import { findHold } from '../platform/holds/find-hold.js';
import { loadHeldHulls, type HeldRow } from '../platform/holds/load-held-hulls.js';
import { recomputingHold } from '../platform/holds/recomputing-hold.js';
import { readCursor, toPage } from '../platform/http/cursor.js';

const WHICH: Readonly<Record<HeldHullsQuery['which'], (row: HeldRow) => boolean>> = {
  all: () => true,
  open: ({ reached, disposed }) => reached && !disposed,
  disposed: ({ reached, disposed }) => reached && disposed,
  out: ({ reached }) => !reached,
};

/** The hulls of a hold, by their numbers. */
@Injectable()
export class ListHeldHulls {
  constructor(private readonly db: DataSource) {}

  async run(hold: string, { which, limit, cursor }: HeldHullsQuery): Promise<HeldHullPage> {
    const [after] = readCursor(cursor, 1);
    return readAsOne(this.db, async (tx) => {
      const found = await findHold(tx, hold);
      const { rows } = await loadHeldHulls(tx, found);
      const asked = rows.filter(WHICH[which]).filter(({ key }) => after === null || key > String(after));
      const page = toPage(asked.slice(0, limit + 1), limit, ({ key }) => [key]);
      return { ...page, items: page.items.map(toHull), recomputing: await recomputingHold(tx, found) };
    });
  }
}

const toHull = (row: HeldRow): HeldHull => {
  const { hull, hin, part, model, state, dealer, leftAt, reached, kg, share, possibly, atHold, disposed, said } = row;
  return {
    ...{ hull, hin, part, model, state, dealer, leftAt, reached, kg, share, possibly, atHold, disposed },
    said: said.map((each) => ({ ...each, doneBy: [...each.doneBy] })),
  };
};
