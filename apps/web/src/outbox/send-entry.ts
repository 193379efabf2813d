import type { SessionView } from '@hull-record/contracts';
import { pathOf } from '../api/ask.js';
import { asProblem } from '../api/problem.js';
import { session } from '../api/session.js';
import type { Entry, EntryProblem, Photo } from './entry.js';

/** What became of a try: it is recorded, it was refused, or it is to be tried again. */
export type Outcome =
  | { readonly kind: 'sent'; readonly result: unknown }
  | { readonly kind: 'refused'; readonly problem: EntryProblem }
  | { readonly kind: 'later'; readonly why: 'unreachable' | 'busy' | 'sign-in' };

/** Says of these to try again: nobody is known here, timed out, too early, too many. */
const TRY_AGAIN: ReadonlySet<number> = new Set([401, 408, 425, 429]);

/** Sends one entry. The service records the same id once, however often it comes. */
export const sendEntry = async (
  entry: Entry,
  parameters: Readonly<Record<string, string>>,
  photo: Photo | undefined,
): Promise<Outcome> => {
  try {
    if (entry.under === 'session' && !(await isSignedIn(entry))) return { kind: 'later', why: 'sign-in' };
    const request = photo === undefined ? asJson(entry) : asForm(entry, photo);
    const headers = { ...headersOf(entry), ...request.headers };
    const answer = await fetch(pathOf(entry.path, parameters), { method: 'POST', body: request.body, headers });
    return await outcomeOf(answer);
  } catch {
    return { kind: 'later', why: 'unreachable' };
  }
};

const asJson = ({ body }: Entry) => ({
  body: JSON.stringify(body),
  headers: { 'content-type': 'application/json' },
});

const asForm = ({ body }: Entry, { bytes, type, name }: Photo) => {
  const form = new FormData();
  form.set('record', JSON.stringify(body));
  form.set('photo', new Blob([bytes], { type }), name);
  return { body: form, headers: {} };
};

const headersOf = ({ under }: Entry): Readonly<Record<string, string>> =>
  under === 'device' ? { 'x-hull-record-queued': '1' } : session.headersOfWrites();

/** A browser that is no enrolled device sends in the name of who signed in: what another entered waits for them. */
const isSignedIn = async ({ body }: Entry): Promise<boolean> => {
  const answer = await fetch('/api/session');
  if (!answer.ok) return false;
  const view = (await answer.json()) as SessionView;
  session.told(view);
  return view.person?.badge.toLowerCase() === body.enteredBy.toLowerCase();
};

const outcomeOf = async (answer: Response): Promise<Outcome> => {
  const said = (await answer.json().catch(() => undefined)) as unknown;
  if (answer.ok) return { kind: 'sent', result: (said as { readonly result?: unknown } | undefined)?.result };
  if (answer.status === 401) return { kind: 'later', why: 'sign-in' };
  const problem = asProblem(said);
  const mayRight = TRY_AGAIN.has(answer.status) || answer.status >= 500 || problem?.type === '/problems/csrf-missing';
  if (mayRight || problem === undefined) return { kind: 'later', why: 'busy' };
  const { type, status, detail, errors = [] } = problem;
  return { kind: 'refused', problem: { type, status, detail, errors } };
};
