import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { ConcessionPage, ConcessionView, PageQuery } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { readTimeCursor, toPage } from '../platform/http/cursor.js';
import { defectMark } from '../platform/marks/marks.js';
import { hullOf } from './hull-of.sql.js';

/** What a concession is of, in words, and the part that it is on. */
const ABOUT = `
  select d.root as id, d.kind || ' ' || ${defectMark('d')} as what, d.part_id from fact.defect d where d.root = o.of_id and ${standing('d')}
  union all
  select g.root, g.what || ' spot ' || g.spot || ': ' || g.value || ' ' || g.unit, coalesce(
      (select r.part_id from fact.layer_record r where r.root = g.of_id and ${standing('r')}),
      (select j.part_id from fact.joint j where j.root = g.of_id and ${standing('j')}),
      (select r.part_id from fact.repair r where r.root = g.of_id and ${standing('r')}),
      (select p.id from fact.part p where p.id = g.of_id))
  from fact.reading g where g.root = o.of_id and ${standing('g')}
  union all
  select c.root, c.detail, c.part_id from fact.nonconformity c where c.root = o.of_id and ${standing('c')}
  union all
  select k.root, e.code || ': ' || k.what, null from fact.equipment_check k join fact.equipment e on e.root = k.equipment_id and ${standing('e')}
  where k.root = o.of_id and ${standing('k')}`;

const LIST = `
  select o.root as id, o.concession, o.of_kind as of, o.of_id as about, coalesce(a.what, o.of_kind) as what, p.number as part,
    ${hullOf('a.part_id')} as hull, o.reason, w.badge as by, o.happened_at as "happenedAt"
  from fact.disposition o
  join fact.journal e on e.id = o.entry_id join fact.person w on w.id = e.person_id
  left join lateral (${ABOUT}) a on true
  left join fact.part p on p.id = a.part_id
  where o.disposition = 'use as is' and ${standing('o')}
    and ($1::timestamptz is null or (o.happened_at, o.root) < ($1, $2::uuid))
  order by o.happened_at desc, o.root desc limit $3`;

/** What is used as it is under a concession, the newest first. */
@Injectable()
export class ListConcessions {
  constructor(private readonly db: DataSource) {}

  async run({ cursor, limit }: PageQuery): Promise<ConcessionPage> {
    const { at, id } = readTimeCursor(cursor);
    type Row = Omit<ConcessionView, 'happenedAt'> & { happenedAt: Date };
    const rows = await this.db.query<Row[]>(LIST, [at, id, limit + 1]);
    const told = rows.map((row) => ({ ...row, happenedAt: row.happenedAt.toISOString() }));
    return toPage(told, limit, (row) => [row.happenedAt, row.id]);
  }
}
