import { Injectable } from '@nestjs/common';
import type { CasePage, CaseSummary, CaseView, FrozenSettings, LookSummary, PageQuery } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { personNow } from '../platform/access/call.js';
import { readAsOne } from '../platform/database/read-as-one.js';
import { standing } from '../platform/facts/standing.js';
import { readTimeCursor, toPage } from '../platform/http/cursor.js';
import { findCase, maySee } from '../platform/cases/find-case.js';

const BY = (entry: string): string =>
  `(select w.badge from fact.journal e join fact.person w on w.root = e.person_id where e.id = ${entry} limit 1)`;

const newest = (column: string): string => `(
  select a.${column} from fact.case_answer a join fact.case_look k on k.id = a.look_id
  where k.case_id = c.root order by k.number desc limit 1)`;

const SUMMARY = `
  c.root as id, c.code, c.title, c.under_counsel as "underCounsel", c.happened_at as "openedAt", ${BY('c.entry_id')} as by,
  (select count(*)::int from fact.case_look k where k.case_id = c.root) as looks,
  ${newest('verdict')} as verdict, ${newest('exploratory')} as exploratory`;

const LIST = `
  select ${SUMMARY} from fact.case_file c where ${maySee('c', '$4::uuid')} and ${standing('c')}
    and ($1::timestamptz is null or (c.happened_at, c.root) < ($1, $2::uuid))
  order by c.happened_at desc, c.root desc limit $3`;

const ONE = `
  select ${SUMMARY}, array(select w.badge from fact.person w where w.root = any(c.readers) and ${standing('w')} order by w.badge) as readers
  from fact.case_file c where c.root = $1`;

/** SQL of frozen settings `s`. */
export const FROZEN = `s.version, s.sha256, s.settings, s.reason, ${BY('s.entry_id')} as by, s.recorded_at as "frozenAt"`;

/** SQL of a look `k` with its settings `s`. */
export const LOOK_COLUMNS = `
  k.number as look, s.version, k.recorded_at as "askedAt", ${BY('k.entry_id')} as by,
  (select json_build_object('state', r.state, 'step', r.step, 'done', r.done, 'total', r.total, 'trouble', r.trouble)
   from work.case_run r where r.look_id = k.id) as progress,
  (select a.verdict from fact.case_answer a where a.look_id = k.id) as verdict,
  (select a.exploratory from fact.case_answer a where a.look_id = k.id) as exploratory`;

/** Cases that the caller may see, with every look at them. */
@Injectable()
export class ReadCases {
  constructor(private readonly db: DataSource) {}

  async list({ limit, cursor }: PageQuery): Promise<CasePage> {
    const { at, id } = readTimeCursor(cursor);
    type Row = Omit<CaseSummary, 'openedAt'> & { readonly openedAt: Date };
    const rows = await this.db.query<Row[]>(LIST, [at, id, limit + 1, personNow().personId]);
    return toPage(rows, limit, (row) => [row.openedAt.toISOString(), row.id]) as unknown as CasePage;
  }

  /** @throws NotThere */
  one(code: string): Promise<CaseView> {
    return readAsOne(this.db, async (tx) => {
      const { id } = await findCase(tx, code, personNow().personId);
      type Row = Omit<CaseView, 'settings' | 'history'>;
      const [row] = (await tx.query<Row[]>(ONE, [id])) as [Row];
      const settings = await tx.query<FrozenSettings[]>(
        `select ${FROZEN} from fact.case_settings s where s.case_id = $1 order by s.version desc`,
        [id],
      );
      const history = await tx.query<LookSummary[]>(
        `select ${LOOK_COLUMNS} from fact.case_look k join fact.case_settings s on s.id = k.settings_id
         where k.case_id = $1 order by k.number desc`,
        [id],
      );
      return { ...row, settings, history };
    });
  }
}
