import type { QueryClient } from '@tanstack/react-query';
import { Refused } from '../api/problem.js';
import { hullQuery, partQuery } from '../api/queries.js';

/** A part that a code may mean. */
export interface FoundPart {
  readonly number: string;
  readonly kind: string;
  readonly hull: string | null;
}

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
