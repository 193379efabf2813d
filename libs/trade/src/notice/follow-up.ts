/** What a defect notice says, each with the rule that asks for it. */
export const NOTICE_HOLDS = [
  { what: 'description of the defect', source: '46 USC 4310(d)' },
  { what: 'evaluation of the hazard', source: '46 USC 4310(d)' },
  { what: 'measures to correct it', source: '46 USC 4310(d)' },
  { what: "undertaking to correct it at the maker's cost", source: '46 USC 4310(d)' },
  { what: 'name and address of the manufacturer', source: '33 CFR 179.09' },
  { what: 'make, model year, inclusive months of manufacture or serial numbers', source: '33 CFR 179.09' },
] as const;

/** One boat that a defect may affect. */
export interface NoticedBoat {
  /** It has left the place of manufacture: the duty begins there. */
  readonly leftPlant: boolean;
  readonly inspected: 'defect' | 'none' | 'not yet';
  readonly corrected: boolean;
  /** Whether its first purchaser has been notified; `returned`: not, because of an out-of-date name or address. */
  readonly notified: 'yes' | 'returned' | 'not yet';
}

/** Figures of the initial and the follow-up report. */
export interface FollowUpFigures {
  /** Best estimate of the total number potentially affected (33 CFR 179.13). */
  readonly affected: number;
  /** Units in which the defect was discovered (33 CFR 179.15(a)(2)). */
  readonly discovered: number;
  /** Units in which correction is completed (33 CFR 179.15(a)(3)). */
  readonly completed: number;
  /** First purchasers not notified because of an out-of-date name or address (33 CFR 179.15(a)(4)). */
  readonly notNotified: number;
}

/** Counts the boats for the reports to the authority. Those that never left the plant are contained, and not counted. */
export const followUpFigures = (boats: readonly NoticedBoat[]): FollowUpFigures => {
  const left = boats.filter(({ leftPlant }) => leftPlant);
  return {
    affected: left.length,
    discovered: left.filter(({ inspected }) => inspected === 'defect').length,
    completed: left.filter(({ corrected }) => corrected).length,
    notNotified: left.filter(({ notified }) => notified === 'returned').length,
  };
};
