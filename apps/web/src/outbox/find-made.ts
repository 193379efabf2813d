import type { Entry, EntryProblem, MadeBy } from './entry.js';
import { sentOf } from './kept-entries.js';

/** The entry is about something that an earlier one was to make, which was never recorded. */
export const NOT_MADE: EntryProblem = { type: 'not-made', status: 0, detail: '', errors: [] };

interface LayersMade {
  readonly layers?: readonly { readonly part: string; readonly id: string }[];
}

/** The values of an entry's path; null when what it is about was never recorded. */
export const findMade = async ({ parameters }: Entry): Promise<Readonly<Record<string, string>> | null> => {
  const found: [string, string][] = [];
  for (const [name, value] of Object.entries(parameters)) {
    const id = typeof value === 'string' ? value : await madeId(value);
    if (id === null) return null;
    found.push([name, id]);
  }
  return Object.fromEntries(found);
};

/** An entry makes what has its own id; one of several parts says in its answer what it made for each. */
const madeId = async ({ entry, part }: MadeBy): Promise<string | null> => {
  const sent = await sentOf(entry);
  if (sent === undefined) return null;
  if (part === null) return sent.id;
  return (sent.result as LayersMade | undefined)?.layers?.find((made) => made.part === part)?.id ?? null;
};
