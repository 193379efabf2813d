import type { DataSource, Logger } from 'typeorm';

/** Runs something, and gives with its result the SQL statements that the service sent meanwhile. */
export const statementsOf = async <T>(db: DataSource, run: () => Promise<T>): Promise<{ result: T; sql: string[] }> => {
  const sql: string[] = [];
  const before = db.logger;
  const nothing = (): void => undefined;
  const logger: Logger = {
    ...{ logQueryError: nothing, logQuerySlow: nothing, logSchemaBuild: nothing, logMigration: nothing, log: nothing },
    logQuery: (query) => sql.push(query),
  };
  db.logger = logger;
  try {
    return { result: await run(), sql };
  } finally {
    db.logger = before;
  }
};
