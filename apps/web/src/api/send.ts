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
export const send = async <T>(path: string, body?: unknown, signal?: AbortSignal): Promise<T> => {
  const response = await reach(path, { ...(body === undefined ? {} : writing(body)), ...(signal ? { signal } : {}) });
  const answer = (await response.json().catch(() => undefined)) as unknown;
  if (response.status === 401) session.signInAsked();
  if (!response.ok) throw new Refused(response.status, asProblem(answer));
  return answer as T;
};

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
