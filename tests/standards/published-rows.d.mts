/** A published row as it stands on the committed list. */
export interface PublishedRow {
  readonly row: string;
  readonly topic: string;
  readonly code: string;
  readonly fact: string;
  readonly source: string;
  readonly tests?: readonly string[];
  readonly why?: string;
}

/** A test that ran. */
export interface RanTest {
  readonly file: string;
  readonly name: string;
  readonly passed: boolean;
}

export const rowFaults: (rows: readonly PublishedRow[], ran: readonly RanTest[]) => readonly string[];
export const readRows: () => readonly PublishedRow[];
