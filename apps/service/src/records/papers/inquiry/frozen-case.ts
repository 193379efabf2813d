/** Frozen settings of a case as the report names them: what fact.case_settings keeps, of all methods so far. */
export interface FrozenCase {
  readonly method: string;
  readonly kind: string;
  readonly models: readonly string[];
  readonly builtFrom: string | null;
  readonly builtTo: string | null;
  readonly origin: string;
  readonly cutOff: string;
  readonly cutOffBecause: string;
  readonly reportLagDays: number;
  readonly strata: readonly string[];
  readonly exposureShare: number;
  readonly claims: string;
  readonly attribution: {
    readonly seed: number;
    readonly worlds: number;
    readonly leaders: number;
    readonly shown: number;
    readonly untestableAbove: number;
    readonly unrecorded: number;
    readonly mostBad: number;
    readonly nearlySame: number;
    readonly thetas: readonly number[];
    readonly backgrounds: readonly number[];
    /** Backgrounds up to which words are given; settings of the first method have none. */
    readonly wordsUpTo?: number;
    readonly priorTimes: readonly number[];
    readonly lines: {
      readonly strongQ: number;
      readonly strongOdds: number;
      readonly strongPosterior: number;
      readonly suggestiveQ: number;
    };
  };
}
