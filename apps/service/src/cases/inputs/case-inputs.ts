/** A hull at risk, as it is judged: ages are days since the time origin of the case. */
export interface JudgedHull {
  readonly number: string;
  /** Month in which it was begun, YYYY-MM. */
  readonly built: string;
  readonly stratum: string;
  /** Age from which on it was watched; 0 unless claims until the settings were frozen are set aside. */
  readonly from: number;
  /** Month of its time origin, YYYY-MM. */
  readonly since: string;
  /** At its first claim, or until which it was watched. */
  readonly age: number;
  readonly claimed: boolean;
  /** Ages of all its claims, repeated ones too, and until when it was watched for them. */
  readonly claimAges: readonly number[];
  readonly until: number;
  /** May still have a first claim: not scrapped, and without any claim of the kind, of whatever origin. */
  readonly running: boolean;
}

/** What became of the hulls and claims that do not count. */
export interface LeftOut {
  readonly prompted: number;
  readonly late: number;
  /** Their claim was known, or their watching over, when the settings were frozen. */
  readonly before: number;
  /** Their first claim is older than their time origin. */
  readonly beforeOrigin: number;
  readonly withoutOrigin: number;
  readonly withoutOriginWithClaim: number;
  readonly notLaunched: number;
}

/** As counts begin. */
export const NOTHING_LEFT_OUT = {
  ...{ prompted: 0, late: 0, before: 0, beforeOrigin: 0, withoutOrigin: 0, withoutOriginWithClaim: 0, notLaunched: 0 },
} satisfies LeftOut;

/**
 * A lot in one kind of layer: places of hulls, rising, and its largest share of like material there. Lists of a large plant
 * have fifteen million numbers: packed when they are read, plain where they are read back.
 */
export interface LotInHulls {
  readonly lot: string;
  readonly supplierLot: string | null;
  readonly material: string | null;
  readonly family: string;
  readonly hulls: ArrayLike<number>;
  readonly shares: ArrayLike<number>;
}

/** Something else that hulls have in common. */
export interface OtherInHulls {
  readonly family: string;
  readonly name: string;
  readonly hulls: readonly number[];
}

/** A place of a claim on the unrolled skin, as shares: x of the length, y of the edge, port above 0. */
export interface SpotOnHull {
  readonly hull: number;
  readonly x: number;
  readonly y: number;
}

/** All that a verdict is worked out from; kept under the hash of its canonical JSON. */
export interface CaseInputs {
  readonly watchedUntil: string;
  readonly exploratory: boolean;
  readonly hulls: readonly JudgedHull[];
  readonly leftOut: LeftOut;
  readonly lots: readonly LotInHulls[];
  readonly others: readonly OtherInHulls[];
  readonly spots: readonly SpotOnHull[];
  /** Of faults of the bottom: what part of the girth of these hulls lies below the waterline; else null, or not known. */
  readonly belowWater: number | null;
  readonly warrantyCapDays: number | null;
}
