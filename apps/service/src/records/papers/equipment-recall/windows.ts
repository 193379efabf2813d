/** A check of equipment, as far as it opens and closes windows. */
export interface Check {
  readonly what: string;
  readonly good: boolean;
  readonly happened_at: Date;
}

/** A time in which equipment may have been unfit: after the last good check, over bad ones, before the next good one. */
export interface Window<C extends Check> {
  readonly what: string;
  /** The last good check of the same kind before, not included; null: none was ever made before. */
  readonly lastGood: C | null;
  /** At least one, the oldest first. */
  readonly bad: readonly [C, ...C[]];
  /** The next good check of the same kind, not included; null: it still lasts. */
  readonly nextGood: C | null;
}

/**
 * The windows that checks open, kind by kind, in the order in which their first bad check was made; as
 * `platform/equipment/suspect.sql.ts` has them (ISO 9001:2015 7.1.5.2).
 */
export const windowsOf = <C extends Check>(checks: readonly C[]): readonly Window<C>[] => {
  const kinds = [...new Set(checks.map(({ what }) => what))];
  return kinds
    .flatMap((what) => ofOneKind(checks.filter((check) => check.what === what)))
    .sort((a, b) => a.bad[0].happened_at.getTime() - b.bad[0].happened_at.getTime() || (a.what < b.what ? -1 : 1));
};

const ofOneKind = <C extends Check>(checks: readonly C[]): readonly Window<C>[] => {
  const windows: Window<C>[] = [];
  let lastGood: C | null = null;
  let bad: C[] = [];
  const close = (nextGood: C | null): void => {
    const [first, ...rest] = bad;
    if (first !== undefined) windows.push({ what: first.what, lastGood, bad: [first, ...rest], nextGood });
    bad = [];
  };
  for (const check of [...checks].sort((a, b) => a.happened_at.getTime() - b.happened_at.getTime())) {
    if (check.good) {
      close(check);
      lastGood = check;
    } else {
      bad.push(check);
    }
  }
  close(null);
  return windows;
};

/** Whether what was done at an instant falls into a window. */
export const isWithin = ({ lastGood, nextGood }: Window<Check>, at: Date): boolean =>
  (lastGood === null || at > lastGood.happened_at) && (nextGood === null || at < nextGood.happened_at);
