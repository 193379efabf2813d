import type { QueryClient } from '@tanstack/react-query';
import { Refused } from '../api/problem.js';
import { hullQuery, partQuery } from '../api/queries.js';

/** A part that a code may mean. */
export interface FoundPart {
  readonly number: string;
  readonly kind: string;
  readonly hull: string | null;
}

/** What was scanned or typed: the code of a hull or part, or the path of a label on something else. */
export type Sought = { readonly code: string } | { readonly label: string };

const LABEL = /\/l\/([a-z]+)\/([^/?#\s]+)/;

/** Reads what a scanner or a person typed. A scanner may type the whole address of a label, or its path alone. */
export const readSought = (typed: string): Sought => {
  const [path, of = '', code = ''] = LABEL.exec(typed) ?? [];
  if (path === undefined) return { code: typed.trim() };
  return of === 'hull' || of === 'part' ? { code: decoded(code) } : { label: path };
};

const decoded = (code: string): string => {
  try {
    return decodeURIComponent(code);
  } catch {
    return code;
  }
};

/**
 * The parts that a code means: the part of that number, or all parts of the hull of that number or HIN; none when
 * nothing has it. Without network it is looked for in what this device read before.
 *
 * @throws Unreachable, Refused
 */
export const findParts = async (client: QueryClient, code: string): Promise<readonly FoundPart[]> => {
  const part = await client.fetchQuery(partQuery(code)).catch(noneOf404);
  if (part !== null) return [part];
  const hull = await client.fetchQuery(hullQuery(code)).catch(noneOf404);
  return hull === null ? [] : hull.parts.map(({ number, kind }) => ({ number, kind, hull: hull.number }));
};

const noneOf404 = (error: unknown): null => {
  if (error instanceof Refused && error.status === 404) return null;
  throw error;
};
