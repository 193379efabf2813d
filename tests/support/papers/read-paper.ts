import { readPages, solid } from '../read-pdf.js';
import type { RunningService } from '../service.js';

/** A paper as it was answered, read back. */
export interface AnsweredPaper {
  readonly headers: Headers;
  readonly bytes: Buffer;
  /** Everything on the pages without spaces, in the order in which it is read. */
  readonly text: string;
}

/** Asks the service for a paper and reads what is printed; throws unless it is answered. */
export const readPaper = async (service: RunningService, path: string): Promise<AnsweredPaper> => {
  const answer = await fetch(`${service.url}${path}`, { headers: await service.signedIn() });
  if (answer.status !== 200) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
  const bytes = Buffer.from(await answer.arrayBuffer());
  return { headers: answer.headers, bytes, text: solid(await readPages(bytes)) };
};
