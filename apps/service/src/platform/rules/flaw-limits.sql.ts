import type { EntityManager } from 'typeorm';
import type { FlawRow } from '@hull-record/contracts';
import { FLAW_ACCEPTANCE, type FlawLevel, type FlawRow as TradeRow } from '@hull-record/trade';
import { standing } from '../facts/standing.js';

export interface FlawLimits {
  readonly level: FlawLevel | null;
  readonly rows: readonly FlawRow[];
}

/** At which level a plant accepted flaws at an instant; none until it says so. */
export const flawLimitsAt = async (tx: EntityManager, plantId: string, at: Date): Promise<FlawLimits> => {
  const [found] = await tx.query<FlawLimits[]>(
    `select f.level, f.rows from fact.flaw_limits f where f.plant_id = $1 and f.happened_at <= $2 and ${standing('f')}
     order by f.happened_at desc, f.recorded_at desc, f.id limit 1`,
    [plantId, at],
  );
  return found ?? { level: null, rows: [] };
};

/** The default table with the rows of the plant instead of its own. */
export const flawTable = (rows: readonly FlawRow[]): readonly TradeRow[] => [
  ...(rows as readonly TradeRow[]),
  ...FLAW_ACCEPTANCE.filter(({ kind }) => !rows.some((own) => own.kind === kind)),
];

/** A row of the table as the API shows it. */
export const toFlawRow = ({ kind, II, III, source }: TradeRow): FlawRow => ({ kind, II, III, source }) as FlawRow;
