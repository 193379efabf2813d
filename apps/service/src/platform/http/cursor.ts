import { InvalidRequest } from '../refusals.js';

/**
 * The place in a list after which a page begins: the sort key of the last item of the page before.
 *
 * @throws InvalidRequest when it is not one that this service gave out
 */
export const readCursor = (cursor: string | undefined, keys: number): readonly (string | number | null)[] => {
  if (cursor === undefined) return Array.from({ length: keys }, () => null);
  try {
    const parsed: unknown = JSON.parse(Buffer.from(cursor, 'base64url').toString('utf8'));
    if (
      Array.isArray(parsed) &&
      parsed.length === keys &&
      parsed.every((key) => typeof key === 'string' || typeof key === 'number')
    ) {
      return parsed;
    }
  } catch {
    // Falls through: the caller is told the same whatever is wrong with it.
  }
  throw notACursor();
};

const notACursor = (): InvalidRequest =>
  new InvalidRequest([{ pointer: '/cursor', detail: 'is not a cursor of this list: use `next` of the page before' }]);

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

/**
 * The place in a list that is ordered by instant and id.
 *
 * @throws InvalidRequest when it is not one that this service gave out
 */
export const readTimeCursor = (
  cursor: string | undefined,
): { readonly at: string | null; readonly id: string | null } => {
  const [at = null, id = null] = readCursor(cursor, 2);
  if (at === null || id === null) return { at: null, id: null };
  if (Number.isNaN(Date.parse(String(at))) || !UUID.test(String(id))) throw notACursor();
  return { at: new Date(String(at)).toISOString(), id: String(id) };
};

/** Cuts a page out of one row more than the limit, and says where the next one begins. */
export const toPage = <T>(
  rows: readonly T[],
  limit: number,
  keyOf: (row: T) => readonly (string | number)[],
): { items: T[]; next: string | null } => {
  const items = rows.slice(0, limit);
  const last = items.at(-1);
  const more = rows.length > limit && last !== undefined;
  return { items, next: more ? Buffer.from(JSON.stringify(keyOf(last)), 'utf8').toString('base64url') : null };
};
