/** What went wrong with the embedded PostgreSQL, as a word that code may test. */
export type EmbeddedErrorCode =
  | 'programs-missing'
  | 'programs-unusable'
  | 'already-owned'
  | 'wrong-owner'
  | 'wrong-major'
  | 'data-missing'
  | 'init-failed'
  | 'start-failed'
  | 'stop-failed';

/** An embedded PostgreSQL that cannot be used as asked; the message says what was found and what to do. */
export class EmbeddedPostgresError extends Error {
  override readonly name = 'EmbeddedPostgresError';

  constructor(
    readonly code: EmbeddedErrorCode,
    message: string,
    options?: ErrorOptions,
  ) {
    super(message, options);
  }
}

/** The way out that always exists, to end a message with. */
export const USE_A_SERVER = 'or set DATABASE_URL and DATABASE_OWNER_URL to use a PostgreSQL server of your own';
