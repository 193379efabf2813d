import { readPages, solid } from './read-pdf.js';
import type { RunningService } from './service.js';

/** A build record as it was answered, read back. */
export interface PrintedRecord {
  readonly headers: Headers;
  readonly bytes: Buffer;
  /** Everything on the pages without spaces, in the order in which it is read. */
  readonly text: string;
}

/** Asks the service for the build record of a hull, and reads what is printed; throws unless it is answered. */
export const readRecord = async (service: RunningService, hull: string, asOf?: string): Promise<PrintedRecord> => {
  const query = asOf === undefined ? '' : `?asOf=${encodeURIComponent(asOf)}`;
  const answer = await fetch(`${service.url}/api/hulls/${encodeURIComponent(hull)}/build-record.pdf${query}`, {
    headers: await service.signedIn(),
  });
  if (answer.status !== 200) throw new Error(`${answer.status} ${await answer.text()}`);
  const bytes = Buffer.from(await answer.arrayBuffer());
  return { headers: answer.headers, bytes, text: solid(await readPages(bytes)) };
};

/** Words as they are found in the text of a record. */
export const printed = (words: string): string => words.replace(/\s/gu, '');
