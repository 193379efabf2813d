import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { EquipmentCheckView } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';

/** Checks of a piece of equipment, the newest first. */
@Injectable()
export class ListChecks {
  constructor(private readonly db: DataSource) {}

  run(code: string): Promise<EquipmentCheckView[]> {
    return this.db.query(
      `select k.id, k.what, k.value, k.unit, k.limits, k.good, k.measured, k.certificate, k.note, w.badge as by, k.happened_at as "happenedAt",
         (select o.disposition from fact.disposition o where o.of_id = k.root and ${standing('o')} order by o.recorded_at desc limit 1) as disposition
       from fact.equipment e
       join fact.equipment_check k on k.equipment_id = e.root and ${standing('k')}
       join fact.journal j on j.id = k.entry_id join fact.person w on w.id = j.person_id
       where e.code = $1 and ${standing('e')} order by k.happened_at desc, k.id`,
      [code],
    );
  }
}
