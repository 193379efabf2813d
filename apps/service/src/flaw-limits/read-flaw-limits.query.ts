import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { FlawLimitsView, FlawRow } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { flawTable, toFlawRow } from '../platform/rules/flaw-limits.sql.js';

const HISTORY = `
  select f.id, f.happened_at as from, f.level, f.rows, f.reason from fact.flaw_limits f
  where ${standing('f')} order by f.happened_at desc, f.recorded_at desc, f.id`;

type Row = Omit<FlawLimitsView['history'][number], 'ownRows'> & { readonly rows: readonly FlawRow[] };

const NOTE =
  'ASTM D2563 was withdrawn in 2024 and serves as vocabulary. Numbers from memory are defaults, to be confirmed against the standard; none of them stops anybody. Level IV is what buyer and supplier agree.';

/** The acceptance table of flaws as it is judged by now, and what was chosen before. */
@Injectable()
export class ReadFlawLimits {
  constructor(private readonly db: DataSource) {}

  async run(): Promise<FlawLimitsView> {
    const history = await this.db.query<Row[]>(HISTORY);
    const [newest] = history;
    return {
      level: newest?.level ?? null,
      rows: flawTable(newest?.rows ?? []).map(toFlawRow),
      note: NOTE,
      history: history.map(({ rows, ...chosen }) => ({ ...chosen, ownRows: rows.length })),
    };
  }
}
