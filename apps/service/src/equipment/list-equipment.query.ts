import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { standing } from '../platform/facts/standing.js';

type Row = { id: string } & Record<'code' | 'kind' | 'description', string>;

/** Everything of this kind that stands, by code. */
@Injectable()
export class ListEquipment {
  constructor(private readonly db: DataSource) {}

  run(): Promise<Row[]> {
    return this.db.query(
      `select x.root as id, x.code, x.kind, x.description from fact.equipment x where ${standing('x')} order by x.code`,
    );
  }
}
