/** Things in groups of one key each, in the order in which the keys come up. */
export const groups = <T, K>(things: readonly T[], keyOf: (thing: T) => K): ReadonlyMap<K, readonly T[]> => {
  const found = new Map<K, T[]>();
  for (const thing of things) {
    const key = keyOf(thing);
    const group = found.get(key);
    if (group) group.push(thing);
    else found.set(key, [thing]);
  }
  return found;
};
