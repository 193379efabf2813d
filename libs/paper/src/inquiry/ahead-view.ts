import type { Said } from './said.js';

/** What is known by age, and how many more first claims to expect. */
export interface AheadView {
  readonly says: readonly Said[];
  readonly groups: readonly GroupView[];
  readonly months: readonly MonthView[];
  readonly cannotSay: string;
}

/** A month ahead: first claims expected in it with their 90 % interval, of each group in their order; null where none is given. */
export interface MonthView {
  readonly month: string;
  readonly expected: readonly (number | null)[];
  readonly limits: readonly ({ readonly lower: number; readonly upper: number } | null)[];
}

/** Hulls that are watched together. */
export interface GroupView {
  readonly group: string;
  readonly says: readonly Said[];
  readonly sentence: string;
  /** Share of hulls without a claim by age in days, with its band; a null limit cannot be told. */
  readonly curve: readonly {
    readonly days: number;
    readonly without: number;
    readonly lower: number | null;
    readonly upper: number | null;
  }[];
  /** Mean number of claims a hull by age in days, with its band. */
  readonly mean: readonly {
    readonly days: number;
    readonly mean: number;
    readonly lower: number;
    readonly upper: number;
  }[];
  /** The same at some ages, in words. */
  readonly ages: readonly {
    readonly age: string;
    readonly atRisk: string;
    readonly without: string;
    readonly mean: string;
  }[];
}
