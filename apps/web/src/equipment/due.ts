/** What is known of the checks of a piece of equipment. */
interface Checked {
  readonly code: string;
  readonly kind: string;
  readonly lastCheck: { readonly good: boolean; readonly happenedAt: string } | null;
}

/** After how many days a check is due: of a gun or dispenser, and of everything else. */
export interface CheckDays {
  readonly gun: number;
  readonly other: number;
}

/** How it stands with the checks: found unfit, never checked, due, or fit. */
export type Due = 'unfit' | 'never' | 'due' | 'fit';

const DAY_MS = 86_400_000;
const ORDER: readonly Due[] = ['unfit', 'never', 'due', 'fit'];

/**
 * How a piece of equipment stands at an instant.
 *
 * How often to check is the plant's to say; a day for what sprays and a year for what measures are common practice.
 *
 * @param at ms since 1970
 */
export const dueOf = ({ kind, lastCheck }: Checked, days: CheckDays, at: number): Due => {
  if (lastCheck === null) return 'never';
  if (!lastCheck.good) return 'unfit';
  const most = kind === 'gun' || kind === 'dispenser' ? days.gun : days.other;
  return at - Date.parse(lastCheck.happenedAt) > most * DAY_MS ? 'due' : 'fit';
};

/** What needs somebody first stands first; alike, by code. */
export const inOrderOfNeed = <T extends Checked>(equipment: readonly T[], days: CheckDays, at: number): readonly T[] =>
  [...equipment].sort(
    (a, b) =>
      ORDER.indexOf(dueOf(a, days, at)) - ORDER.indexOf(dueOf(b, days, at)) || a.code.localeCompare(b.code, 'en'),
  );
