/** What a case comes to: evidence of association, never of cause. */
export type Verdict = 'strong' | 'suggestive' | 'no lot stands out' | 'the data cannot say which';

/** How much the leading class stands out. */
export type Strength = 'strong' | 'suggestive' | 'none';

/** The lines between words. */
export interface Lines {
  /** Strong needs q below this, */
  readonly strongQ: number;
  /** the lower limit of observed over expected above this, */
  readonly strongRatio: number;
  /** and a posterior above this under every assumption. */
  readonly strongPosterior: number;
  readonly suggestiveQ: number;
}

/** The lines of the project: q 0.01, ratio 2, posterior 0.9, and q 0.1; settings, and choices of ours. */
export const LINES: Lines = { strongQ: 0.01, strongRatio: 2, strongPosterior: 0.9, suggestiveQ: 0.1 };

/** What is known of a class when it is given its word. */
export interface Standing {
  readonly q: number;
  readonly lowerRatio: number;
  /** The smallest posterior over all assumptions; null when it was not weighed. */
  readonly leastPosterior: number | null;
}

/** How much a class stands out. */
export const strengthOf = ({ q, lowerRatio, leastPosterior }: Standing, lines: Lines): Strength => {
  const strong = q < lines.strongQ && lowerRatio > lines.strongRatio && (leastPosterior ?? 0) > lines.strongPosterior;
  if (strong) return 'strong';
  return q < lines.suggestiveQ ? 'suggestive' : 'none';
};

/** Why one lot cannot be named although something stands out. */
export interface Doubt {
  /** Lots in exactly the same hulls as the leader, itself included. */
  readonly lots: number;
  /** Other lots in nearly the same hulls that stand out too. */
  readonly nearlySame: number;
  /** Whether another class leads under some assumption. */
  readonly leaderChanges: boolean;
}

/** The word for a case, from its leading class. */
export const verdictOf = (strength: Strength, { lots, nearlySame, leaderChanges }: Doubt): Verdict => {
  if (strength === 'none') return 'no lot stands out';
  return lots > 1 || nearlySame > 0 || leaderChanges ? 'the data cannot say which' : strength;
};
