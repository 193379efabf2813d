import { createContext, useContext } from 'react';

/** How the fields of a draft read and change it, by pointer (RFC 6901). */
export interface DraftFields {
  readonly at: (pointer: string) => unknown;
  readonly put: (pointer: string, value: unknown) => void;
  /** What was found wrong there. */
  readonly wrongAt: (pointer: string) => string | undefined;
  /** How many fields are wrong there or below. */
  readonly wrongBelow: (pointer: string) => number;
  readonly labelOf: (pointer: string) => string | undefined;
}

export const DraftContext = createContext<DraftFields | null>(null);

/** The draft that a field stands in. */
export const useDraftFields = (): DraftFields => {
  const fields = useContext(DraftContext);
  if (fields === null) throw new Error('A field of a draft stands outside of its form.');
  return fields;
};
