/** The only place where the service asks what time it is; recorded times come from the database. */
export const now = (): Date => new Date();
