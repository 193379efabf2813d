/** Kilograms that went from a lot into another lot, a hull or a part, by ids. */
export interface Flow {
  readonly from: string;
  readonly to: string;
  readonly kg: number;
}

/** Kilograms at each lot, hull and part, and on the ways between them. */
export interface Flows {
  readonly lots: ReadonlyMap<string, number>;
  /** Hulls, and parts that are in none, by id. */
  readonly owners: ReadonlyMap<string, number>;
  readonly ways: readonly Flow[];
}

/** Flows of which the smallest may be left out, with how many were. */
export interface CutFlows extends Flows {
  readonly leftOut: { readonly lots: number; readonly hulls: number } | null;
}

/** Adds to the kilograms under a key. */
export const addKg = (sums: Map<string, number>, key: string, kg: number): void => {
  sums.set(key, (sums.get(key) ?? 0) + kg);
};

/** Ways between the same two, summed, in the order in which each first came. */
export const sumWays = (ways: readonly Flow[]): readonly Flow[] => {
  const sums = new Map<string, number>();
  for (const { from, to, kg } of ways) addKg(sums, `${from}/${to}`, kg);
  return [...sums].map(([key, kg]) => {
    const [from = '', to = ''] = key.split('/');
    return { from, to, kg };
  });
};

/**
 * At most so many lots and hulls: those asked about, then those with the most kilograms; of as many, by id. Ways to what
 * is left out go with it.
 */
export const cutFlows = ({ lots, owners, ways }: Flows, asked: ReadonlySet<string>, most: number): CutFlows => {
  const first = (id: string): number => (asked.has(id) ? 0 : 1);
  const all = [...lots, ...owners].sort(
    ([a, kgOfA], [b, kgOfB]) => first(a) - first(b) || kgOfB - kgOfA || (a < b ? -1 : 1),
  );
  const kept = new Set(all.slice(0, most).map(([id]) => id));
  const among = (of: ReadonlyMap<string, number>): ReadonlyMap<string, number> =>
    new Map(all.filter(([id]) => kept.has(id) && of.has(id)));
  const [keptLots, keptOwners] = [among(lots), among(owners)];
  return {
    lots: keptLots,
    owners: keptOwners,
    ways: ways.filter(({ from, to }) => kept.has(from) && kept.has(to)),
    leftOut: all.length <= most ? null : { lots: lots.size - keptLots.size, hulls: owners.size - keptOwners.size },
  };
};
