/** What was scanned or typed: the code of a hull or part, or the path of a label on something else. */
export type Sought = { readonly code: string } | { readonly label: string };

const LABEL = /\/l\/([a-z]+)\/([^/?#\s]+)/;

/** Reads what a scanner or a person typed. A scanner may type the whole address of a label, or its path alone. */
export const readSought = (typed: string): Sought => {
  const [path, of = '', code = ''] = LABEL.exec(typed) ?? [];
  if (path === undefined) return { code: typed.trim() };
  return of === 'hull' || of === 'part' ? { code: decoded(code) } : { label: path };
};

const decoded = (code: string): string => {
  try {
    return decodeURIComponent(code);
  } catch {
    return code;
  }
};
