/** A label says a path: `/l/`, the kind of thing, its code percent-encoded; it may stand behind the address of a service. */
const LABEL = /\/l\/[a-z]+\/([^/?#]+)$/;

/** The code in what was scanned or typed: that of a label, else the text itself. */
export const codeIn = (text: string): string => {
  const typed = text.trim();
  const encoded = LABEL.exec(typed)?.[1];
  if (encoded === undefined) return typed;
  try {
    return decodeURIComponent(encoded);
  } catch {
    return typed;
  }
};
