import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { z } from 'zod';
import type { TankView } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { bookKg } from '../platform/lots/book-kg.js';

/** Tanks with the lot that is in each now, and its kilograms by the book. */
@Injectable()
export class ListTanks {
  constructor(private readonly db: DataSource) {}

  run(): Promise<z.output<typeof TankView>[]> {
    return this.db.query(`
      select t.root as id, t.code, m.code as material, t.capacity_kg as "capacityKg", l.code as lot,
        case when l.root is null then null else ${bookKg('l.root')} end as "bookKg"
      from fact.tank t
      join fact.material m on m.root = t.material_id and ${standing('m')}
      left join lateral (
        select l.root, l.code, l.happened_at from fact.lot l where l.tank_id = t.root and ${standing('l')}
        order by l.happened_at desc, l.fill_number desc limit 1) l on not exists (
          select from fact.tank_emptied e where e.tank_id = t.root and e.happened_at >= l.happened_at and ${standing('e')})
      where ${standing('t')} order by t.code`);
  }
}
