import type { Problem } from '@hull-record/contracts';

/** The service answered, but with a refusal. `problem` is what it said, when it said it as problem details. */
export class Refused extends Error {
  constructor(
    readonly status: number,
    readonly problem: Problem | undefined,
  ) {
    super(problem?.detail ?? `The service answered ${status}.`);
  }
}

/** Nothing answered: the service is stopped, or this device does not reach it. */
export class Unreachable extends Error {}

/**
 * Asks the service and gives its answer; with a body it is a POST.
 *
 * The answer is taken to have the shape that contracts promises for the path; it is not checked again here.
 *
 * @throws Refused, Unreachable
 */
export const ask = async <T>(path: string, body?: unknown): Promise<T> => {
  const response = await send(path, body);
  const answer = (await response.json().catch(() => undefined)) as unknown;
  if (!response.ok) throw new Refused(response.status, answer as Problem | undefined);
  return answer as T;
};

/** A path with its query; what is undefined or empty is left out. */
export const withQuery = (path: string, query: Readonly<Record<string, string | undefined>>): string => {
  const given = Object.entries(query).filter((entry): entry is [string, string] => !!entry[1]);
  return given.length === 0 ? path : `${path}?${new URLSearchParams(given).toString()}`;
};

const send = async (path: string, body: unknown): Promise<Response> => {
  try {
    if (body === undefined) return await fetch(path);
    const headers = { 'content-type': 'application/json' };
    return await fetch(path, { method: 'POST', headers, body: JSON.stringify(body) });
  } catch {
    throw new Unreachable('Nothing answered.');
  }
};
