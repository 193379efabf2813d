import type { ParameterOf, PostAnswer, PostPath } from './contract.js';
import { pathOf } from './ask.js';
import { asProblem, Refused, Unreachable } from './problem.js';
import { session } from './session.js';

/**
 * Sends a record with a photo, as a browser form does.
 *
 * @throws Refused, Unreachable
 */
export const postPhoto = async <P extends PostPath>(
  path: P,
  parameters: Readonly<Record<ParameterOf<P>, string>>,
  record: object,
  photo: File | null,
): Promise<PostAnswer<P>> => {
  const form = new FormData();
  form.set('record', JSON.stringify(record));
  if (photo !== null) form.set('photo', photo);
  const request: RequestInit = { method: 'POST', headers: session.headersOfWrites(), body: form };
  const response = await fetch(pathOf(path, parameters), request).catch(() => {
    throw new Unreachable();
  });
  const answer = (await response.json().catch(() => undefined)) as unknown;
  if (response.status === 401) session.signInAsked();
  if (!response.ok) throw new Refused(response.status, asProblem(answer));
  return answer as PostAnswer<P>;
};
