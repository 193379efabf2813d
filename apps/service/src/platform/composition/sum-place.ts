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

/** Sums what was used by role and source. */
export const sumBySource = (amounts: readonly UsedAmount[]): readonly SourceInPlace[] => {
  const sums = new Map<string, SourceInPlace>();
  for (const { kg, weakness, at, composition } of amounts) {
    for (const portion of composition) {
      const key = `${portion.role}/${portion.source ?? ''}`;
      const found: SourceInPlace = {
        role: portion.role,
        source: portion.source,
        kg: kg * portion.fraction,
        weakness: Math.max(weakness, portion.weakness ?? 0),
        firstAt: at,
        lastAt: at,
      };
      sums.set(key, merge(sums.get(key), found));
    }
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
export const sumByRole = (sources: readonly SourceInPlace[]): readonly { role: string; kg: number }[] => {
  const sums = new Map<string, number>();
  for (const { role, kg } of sources) sums.set(role, (sums.get(role) ?? 0) + kg);
  return [...sums].map(([role, kg]) => ({ role, kg }));
};
