/** For each lot, the lots next to it in one direction. */
export type Links = ReadonlyMap<string, readonly string[]>;

/** Links from the first lot of each pair to the second. */
export const linksOf = (pairs: readonly (readonly [from: string, to: string])[]): Links => {
  const links = new Map<string, string[]>();
  for (const [from, to] of pairs) {
    const found = links.get(from);
    if (found) found.push(to);
    else links.set(from, [to]);
  }
  return links;
};

/**
 * Everything reached from a lot, itself included, in the order of distance.
 *
 * A set grows while it is walked: whatever is added is visited too, each lot once, cycles included.
 */
export const closure = (start: string, links: Links): ReadonlySet<string> => {
  const reached = new Set([start]);
  for (const lot of reached) for (const next of links.get(lot) ?? []) reached.add(next);
  return reached;
};
