import { Injectable } from '@nestjs/common';
import type { UnprovedEntry } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { standing } from '../platform/facts/standing.js';

const LIST = `
  select u.id, j.kind, p.badge as "enteredBy", d.code as device, u.happened_at as at,
    array(select distinct pt.number from fact.nonconformity c join fact.part pt on pt.id = c.part_id
      where c.about_kind = 'entry' and c.about_id = u.id and ${standing('c')} order by 1) as parts,
    (select e.reason from fact.entry_confirmation e where e.unproved_entry_id = u.id and not e.confirmed and ${standing('e')}) as refused
  from fact.unproved_entry u
  join fact.journal j on j.id = u.entry_id
  join fact.person p on p.root = u.person_id and ${standing('p')}
  join fact.device d on d.root = j.device_id and ${standing('d')}
  where ${standing('u')} and not exists (
    select from fact.entry_confirmation e where e.unproved_entry_id = u.id and e.confirmed and ${standing('e')})
  order by u.happened_at, u.id limit 1000`;

/** Entries that nobody has confirmed, the oldest first; those that were refused stay. */
@Injectable()
export class ListUnproved {
  constructor(private readonly db: DataSource) {}

  async run(): Promise<UnprovedEntry[]> {
    const rows = await this.db.query<(Omit<UnprovedEntry, 'at'> & { at: Date })[]>(LIST);
    return rows.map((row) => ({ ...row, at: row.at.toISOString() }));
  }
}
