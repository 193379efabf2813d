/** SQL: a text as an id, or null when it is none; compared so, an index on ids serves. */
export const uuidOrNull = (text: string): string =>
  `case when ${text} ~* '^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$' then ${text}::uuid end`;
