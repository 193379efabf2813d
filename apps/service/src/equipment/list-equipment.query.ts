import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { standing } from '../platform/facts/standing.js';

type Row = { id: string } & Record<'code' | 'kind' | 'description', string>;

/** Checks of it, the newest first, as the lists show one. */
const newestCheck = (which: string): string => `(
  select json_build_object('what', k.what, 'good', k.good, 'happenedAt', k.happened_at) from fact.equipment_check k
  where k.equipment_id = x.root and ${standing('k')} ${which} order by k.happened_at desc, k.recorded_at desc, k.id limit 1)`;

/** Everything of this kind that stands, by code. */
@Injectable()
export class ListEquipment {
  constructor(private readonly db: DataSource) {}

  run(): Promise<Row[]> {
    return this.db.query(
      `select x.root as id, x.code, x.kind, x.description, ${newestCheck('')} as "lastCheck", ${newestCheck('and k.good')} as "lastGood"
       from fact.equipment x where ${standing('x')} order by x.code`,
    );
  }
}
