import type { RunningService } from './service.js';

/** How many rows each table of facts holds. */
export const countFacts = async (service: RunningService): Promise<ReadonlyMap<string, number>> => {
  const tables = await service.asOwner<{ name: string }>(
    "select table_name as name from information_schema.tables where table_schema = 'fact' order by 1",
  );
  const counts = new Map<string, number>();
  for (const { name } of tables) {
    const [row] = await service.asOwner<{ rows: number }>(`select count(*)::int as rows from fact."${name}"`);
    counts.set(name, row?.rows ?? 0);
  }
  return counts;
};
