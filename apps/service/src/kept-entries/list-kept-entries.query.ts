import { Injectable } from '@nestjs/common';
import type { KeptEntry } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { recordIn } from './record-in.js';

const LIST = `
  select k.id, d.code as device, k.received_at as "receivedAt", k.path, k.media, k.body,
    (select json_build_object('admitted', e.admitted, 'by', p.badge, 'at', e.happened_at, 'reason', e.reason)
     from fact.entry_decision e join fact.journal j on j.id = e.entry_id join fact.person p on p.id = j.person_id
     where e.kept_entry_id = k.id and ${standing('e')} limit 1) as decided
  from work.kept_entry k join fact.device d on d.root = k.device_id and ${standing('d')}
  order by k.received_at, k.id limit 1000`;

interface Row extends Pick<KeptEntry, 'id' | 'device' | 'path'> {
  readonly receivedAt: Date;
  readonly media: string;
  readonly body: Buffer;
  readonly decided: KeptEntry['decided'];
}

/** What revoked devices sent, in the order in which it came, with what was decided. */
@Injectable()
export class ListKeptEntries {
  constructor(private readonly db: DataSource) {}

  async run(): Promise<KeptEntry[]> {
    const rows = await this.db.query<Row[]>(LIST);
    return rows.map(({ receivedAt, media, body, decided, ...row }) => {
      const record = recordIn(media, body);
      const named = (record as { enteredBy?: unknown } | null)?.enteredBy;
      return {
        ...row,
        enteredBy: typeof named === 'string' ? named : null,
        receivedAt: receivedAt.toISOString(),
        body: record,
        decided: decided && { ...decided, at: new Date(decided.at).toISOString() },
      };
    });
  }
}
