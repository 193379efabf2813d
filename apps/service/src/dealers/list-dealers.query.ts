import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { standing } from '../platform/facts/standing.js';

type Row = { id: string } & Record<'code' | 'name' | 'place', string>;

/** Everything of this kind that stands, by code. */
@Injectable()
export class ListDealers {
  constructor(private readonly db: DataSource) {}

  run(): Promise<Row[]> {
    return this.db.query(
      `select x.root as id, x.code, x.name, x.place from fact.dealer x where ${standing('x')} order by x.code`,
    );
  }
}
