/** A fault that a test must notice. */
export interface Planted {
  /** Ending of the path of the file it is planted in. */
  readonly file: string;
  readonly find: string;
  readonly replace: string;
  /** The integration test that must then fail. */
  readonly test: string;
}

export const PLANTED: Readonly<Record<string, Planted>>;

export function applyFault(source: string, path: string): string;
