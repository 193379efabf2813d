import type { Candidate } from './candidates.js';

/** Candidates that are in exactly the same hulls: no statistic can tell them apart, so they are one hypothesis. */
export interface SuspectClass {
  readonly members: readonly Candidate[];
  readonly hulls: Uint32Array;
}

/** The lots of a class, each once. */
export const lotsOf = ({ members }: SuspectClass): readonly string[] => [...new Set(members.map(({ lot }) => lot))];

/** Collapses candidates with the same hulls, in the order in which they come up. */
export const inseparable = (candidates: readonly Candidate[]): readonly SuspectClass[] => {
  const found = new Map<number, { members: Candidate[]; hulls: Uint32Array }[]>();
  const classes: { members: Candidate[]; hulls: Uint32Array }[] = [];
  for (const candidate of candidates) {
    const key = keyOf(candidate.hulls);
    const alike = found.get(key);
    const same = alike?.find(({ hulls }) => equal(hulls, candidate.hulls));
    if (same) {
      same.members.push(candidate);
      continue;
    }
    const added = { members: [candidate], hulls: candidate.hulls };
    classes.push(added);
    if (alike) alike.push(added);
    else found.set(key, [added]);
  }
  return classes;
};

/** Of so many hulls, one goes into the mixed sum. */
const MIXED = 8;

/** A mixed sum of the length, the last hull and some others; that equal keys mean equal hulls is checked, not trusted. */
const keyOf = (hulls: Uint32Array): number => {
  let mixed = mix(mix(0x811c9dc5, hulls.length), hulls[hulls.length - 1] ?? -1);
  for (let i = 0; i < hulls.length; i += MIXED) mixed = mix(mixed, hulls[i] as number);
  return mixed;
};

const mix = (mixed: number, value: number): number => Math.imul(mixed ^ value, 0x01000193);

const equal = (a: Uint32Array, b: Uint32Array): boolean => {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i += 1) if (a[i] !== b[i]) return false;
  return true;
};

/** Hulls in both over hulls in either (Jaccard), 0 to 1; both rising. */
export const overlap = (a: Uint32Array, b: Uint32Array): number => {
  let [i, j, both] = [0, 0, 0];
  while (i < a.length && j < b.length) {
    const [left, right] = [a[i] as number, b[j] as number];
    if (left === right) both += 1;
    if (left <= right) i += 1;
    if (right <= left) j += 1;
  }
  return both / (a.length + b.length - both);
};
