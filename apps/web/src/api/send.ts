import type { SessionView } from '@hull-record/contracts';
import { asProblem, Refused, Unreachable } from './problem.js';
import { session } from './session.js';

/**
 * Sends a request to the service and gives its answer; with a body it is a POST.
 *
 * The answer is taken to have the shape that contracts promises for the path; it is not checked again here.
 *
 * @throws Refused when it is answered with a refusal; one of status 401 also asks for a sign-in
 * @throws Unreachable when nothing answers
 */
export const send = async <T>(
  path: string,
  body?: unknown,
  signal?: AbortSignal,
  as: 'json' | 'file' = 'json',
): Promise<T> => {
  // A page that was just loaded may write before it has asked who is there.
  if (body !== undefined && !session.isTold()) session.told(await once<SessionView>('/api/session', undefined, signal));
  try {
    return await once<T>(path, body, signal, as);
  } catch (error) {
    if (body === undefined || !isOfAnotherPage(error)) throw error;
    // Somebody signed in anew in another window: this page has the secret of the session before.
    session.told(await once<SessionView>('/api/session', undefined, signal));
    return once<T>(path, body, signal, as);
  }
};

const once = async <T>(
  path: string,
  body: unknown,
  signal: AbortSignal | undefined,
  as: 'json' | 'file' = 'json',
): Promise<T> => {
  const response = await reach(path, { ...(body === undefined ? {} : writing(body)), ...(signal ? { signal } : {}) });
  if (response.ok && as === 'file') return (await response.blob()) as T;
  const answer = (await response.json().catch(() => undefined)) as unknown;
  if (response.status === 401) session.signInAsked();
  if (!response.ok) throw new Refused(response.status, asProblem(answer));
  return answer as T;
};

const isOfAnotherPage = (error: unknown): boolean =>
  error instanceof Refused && error.problem?.type === '/problems/csrf-missing';

const writing = (body: unknown): RequestInit => ({
  method: 'POST',
  headers: { 'content-type': 'application/json', ...session.headersOfWrites() },
  body: JSON.stringify(body),
});

const reach = async (path: string, request: RequestInit): Promise<Response> => {
  try {
    return await fetch(path, request);
  } catch (error) {
    if (request.signal?.aborted) throw error;
    throw new Unreachable();
  }
};
