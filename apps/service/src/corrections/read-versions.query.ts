import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { VersionsView } from '@hull-record/contracts';
import { mayReadCounsel } from '../platform/notices/counsel.js';
import { NotThere } from '../platform/refusals.js';
import { FREE_TEXTS } from '../platform/texts/free-texts.js';
import { textOf } from '../platform/texts/text-of.sql.js';
import { CORRECTABLE } from './correctable.js';

const HEADER = ['id', 'root', 'plant_id', 'entry_id', 'happened_at', 'recorded_at'];

/** Texts that lie apart are shown as everywhere. */
const textsOf = (table: string): string =>
  FREE_TEXTS.filter((text) => text.table === table)
    .map(({ field }) => `|| jsonb_build_object('${field}', ${textOf('x', field)})`)
    .join(' ');

const FIND = Object.keys(CORRECTABLE)
  .map((table) => `select '${table}' as table, x.root from fact.${table} x where x.id::text = lower($1)`)
  .join(' union all ');

const versions = (table: string): string => `
  select x.id, x.recorded_at as "recordedAt", x.happened_at as "happenedAt", p.badge as by,
    to_jsonb(x) - array[${HEADER.map((column) => `'${column}'`).join(', ')}] ${textsOf(table)} as values,
    c.reason as "correctedBecause", c.recorded_at as "correctedAt", cp.badge as "correctedBy"
  from fact.${table} x
  join fact.journal e on e.id = x.entry_id join fact.person p on p.id = e.person_id
  left join fact.correction c on c.corrects = x.id
  left join fact.journal ce on ce.id = c.entry_id left join fact.person cp on cp.id = ce.person_id
  where x.root = $1 order by x.recorded_at, x.id`;

/** The advice of counsel is for those who give notices, here as elsewhere. */
const readable = (table: string, values: Version['values']): Version['values'] =>
  table === 'duty_decision' && !mayReadCounsel() ? { ...values, counsel: null } : values;

type Version = VersionsView['versions'][number];

/** Every version of a fact, oldest first, with why and by whom each was corrected. */
@Injectable()
export class ReadVersions {
  constructor(private readonly db: DataSource) {}

  async run(id: string): Promise<VersionsView> {
    const [found] = await this.db.query<{ table: string; root: string }[]>(FIND, [id]);
    if (!found) throw new NotThere('fact', id);
    const rows = await this.db.query<VersionsView['versions']>(versions(found.table), [found.root]);
    return {
      kind: found.table.replaceAll('_', ' '),
      versions: rows.map((row) => ({ ...row, values: readable(found.table, row.values) })),
    };
  }
}
