import type { EntityManager } from 'typeorm';
import { ClientIdReused } from '../refusals.js';

/** What a journal entry has in the place of a text that lies apart: that there was one, and no more. */
const APART = '(kept apart)';

/** Fields of a request that hold texts which lie apart, such as `symptoms` or `spots.*.note`. */
export type Paths = readonly string[];

/** A request without these texts. */
export const withoutTexts = (body: unknown, paths: Paths): unknown =>
  paths.reduce((left, path) => replaced(left, path.split('.'), () => APART), body);

/** The texts themselves, in no order that counts. */
export const textsIn = (body: unknown, paths: Paths): readonly string[] => {
  const found: string[] = [];
  for (const path of paths) replaced(body, path.split('.'), (text) => (found.push(text), text));
  return found.sort();
};

const replaced = (value: unknown, [key, ...rest]: readonly string[], by: (text: string) => string): unknown => {
  if (key === undefined) return typeof value === 'string' ? by(value) : value;
  if (Array.isArray(value)) return key === '*' ? value.map((each) => replaced(each, rest, by)) : value;
  if (typeof value !== 'object' || value === null || !(key in value)) return value;
  return { ...value, [key]: replaced((value as Record<string, unknown>)[key], rest, by) };
};

/**
 * The digest of a request leaves these texts out, so a retry is compared with what is kept; where one was erased since,
 * nobody can say any more.
 *
 * @throws ClientIdReused
 */
export const assertSameTexts = async (tx: EntityManager, id: string, texts: readonly string[]): Promise<void> => {
  if (texts.length === 0) return;
  const rows = await tx.query<{ value: string }[]>('select value from work.free_text where entry_id = $1', [id]);
  const kept = rows.map(({ value }) => value).sort();
  if (kept.length === texts.length && kept.some((value, i) => value !== texts[i])) throw new ClientIdReused(id);
};
