import type { PartView, RepairView, TouchUpView } from '@hull-record/contracts';

/** Something that another person accepts: a repair, or the touch-ups of one entry. */
export interface Judgeable {
  readonly mark: string;
  readonly doneBy: readonly string[];
  /** It was not judged yet; else it is inspected again. */
  readonly waits: boolean;
  readonly of: { readonly repair: RepairView } | { readonly touchUp: TouchUpView };
}

/** What of a part waits for another person, or may be inspected again: what waits first. */
export const judgeable = ({ repairs, touchUps }: PartView): readonly Judgeable[] => {
  const all: Judgeable[] = [
    ...repairs
      .filter(({ acceptance }) => acceptance === null || acceptance.accepted)
      .map((repair) => ({
        mark: repair.mark,
        doneBy: repair.doneBy,
        waits: repair.acceptance === null,
        of: { repair },
      })),
    ...touchUps
      .filter(({ acceptance }) => acceptance === null)
      .map((touchUp) => ({ mark: touchUp.mark, doneBy: touchUp.doneBy, waits: true, of: { touchUp } })),
  ];
  return all.toSorted((a, b) => Number(b.waits) - Number(a.waits));
};
