import type { Composition } from '@hull-record/genealogy';

/** An amount used in a place, with what it is made of. */
export interface UsedAmount {
  readonly kg: number;
  readonly weakness: number;
  readonly at: Date;
  readonly composition: Composition;
}

/** Kilograms of one source in a place. */
export interface SourceInPlace {
  readonly role: string;
  /** null: the remainder below the floor. */
  readonly source: string | null;
  readonly kg: number;
  /** The weakest basis on any way to it. */
  readonly weakness: number;
  readonly firstAt: Date;
  readonly lastAt: Date;
}

/** Small ones first: a sum comes out the same to the last bit, in whatever order facts were read. */
const smallFirst = <T extends { readonly kg: number }>(all: readonly T[]): readonly T[] =>
  [...all].sort((a, b) => a.kg - b.kg);

/** Sums what was used by role and source. */
export const sumBySource = (amounts: readonly UsedAmount[]): readonly SourceInPlace[] => {
  const portions = amounts.flatMap(({ kg, weakness, at, composition }) =>
    composition.map((portion): SourceInPlace => ({
      role: portion.role,
      source: portion.source,
      kg: kg * portion.fraction,
      weakness: Math.max(weakness, portion.weakness ?? 0),
      firstAt: at,
      lastAt: at,
    })),
  );
  const sums = new Map<string, SourceInPlace>();
  for (const portion of smallFirst(portions)) {
    const key = `${portion.role}/${portion.source ?? ''}`;
    sums.set(key, merge(sums.get(key), portion));
  }
  return [...sums.values()];
};

const merge = (a: SourceInPlace | undefined, b: SourceInPlace): SourceInPlace =>
  a === undefined
    ? b
    : {
        ...a,
        kg: a.kg + b.kg,
        weakness: Math.max(a.weakness, b.weakness),
        firstAt: a.firstAt < b.firstAt ? a.firstAt : b.firstAt,
        lastAt: a.lastAt > b.lastAt ? a.lastAt : b.lastAt,
      };

/** Sums sources by role: what a share is a share of. */
export const sumByRole = (all: readonly SourceInPlace[]): readonly { role: string; kg: number }[] => {
  const sources = smallFirst(all);
  const sums = new Map<string, number>();
  for (const { role, kg } of sources) sums.set(role, (sums.get(role) ?? 0) + kg);
  return [...sums].map(([role, kg]) => ({ role, kg }));
};
