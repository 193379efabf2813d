/** What can have a label. A bucket or a kit is a lot of its own. */
export const LABELLED = ['lot', 'container', 'part', 'hull', 'equipment', 'badge'] as const;
export type Labelled = (typeof LABELLED)[number];

/** What a label is on: the kind of thing, and the code by which people know it. */
export interface LabelTarget {
  readonly of: Labelled;
  readonly code: string;
}

const PATH = /^\/l\/([a-z]+)\/([^/]+)$/;

/**
 * The path that the square code of a label says: `/l/`, the kind of thing, `/`, its code percent-encoded as in a URL
 * (RFC 3986; UTF-8). The lot VE-2231 has `/l/lot/VE-2231`, the hull `86/7` has `/l/hull/86%2F7`.
 *
 * No host: a label outlives the address of a service. `readLabelPath` is the inverse.
 *
 * @throws URIError when the code has half of a surrogate pair, which no record holds
 */
export const labelPath = ({ of, code }: LabelTarget): string => `/l/${of}/${encodeURIComponent(code)}`;

/** Reads the path of a label; null when it is none of ours. Whether there is such a thing is another question. */
export const readLabelPath = (path: string): LabelTarget | null => {
  const [, kind, encoded] = PATH.exec(path) ?? [];
  const of = LABELLED.find((known) => known === kind);
  if (of === undefined || encoded === undefined) return null;
  try {
    return { of, code: decodeURIComponent(encoded) };
  } catch {
    return null;
  }
};
