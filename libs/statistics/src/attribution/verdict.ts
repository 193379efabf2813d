/** What a case comes to: evidence of association, never of cause. */
export type Verdict = 'strong' | 'suggestive' | 'no lot stands out' | 'the data cannot say which';

/** How much the leading class stands out. */
export type Strength = 'strong' | 'suggestive' | 'none';

/** The lines between words. */
export interface Lines {
  /** Strong needs q below this, */
  readonly strongQ: number;
  /** the lower limit of the hazard odds of exposed against other hulls above this, */
  readonly strongOdds: number;
  /** and a posterior above this under every assumption. */
  readonly strongPosterior: number;
  readonly suggestiveQ: number;
}

/**
 * The lines of the project: q 0.01, odds 2, posterior 0.9, and q 0.1; settings, and choices of ours.
 *
 * Odds against other hulls and not observed over expected, for that ratio is against all hulls of the strata, the exposed
 * ones too, and so has a ceiling of one over their share.
 */
export const LINES: Lines = { strongQ: 0.01, strongOdds: 2, strongPosterior: 0.9, suggestiveQ: 0.1 };

/** What is known of a class when it is given its word. */
export interface Standing {
  readonly q: number;
  readonly lowerOdds: number;
  /** The smallest posterior over all assumptions; null when it was not weighed. */
  readonly leastPosterior: number | null;
}

/** How much a class stands out. */
export const strengthOf = ({ q, lowerOdds, leastPosterior }: Standing, lines: Lines): Strength => {
  const strong = q < lines.strongQ && lowerOdds > lines.strongOdds && (leastPosterior ?? 0) > lines.strongPosterior;
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
  /** Whether it is all but certain that some lot is bad, and not that it is one of the leader. */
  readonly split: boolean;
}

/** The word for a case, from its leading class. */
export const verdictOf = (strength: Strength, { lots, nearlySame, leaderChanges, split }: Doubt): Verdict => {
  if (strength === 'none') return 'no lot stands out';
  return lots > 1 || nearlySame > 0 || leaderChanges || split ? 'the data cannot say which' : strength;
};
