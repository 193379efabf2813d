/** Where a hull that a hold reached is, as far as it matters to whoever has to look at it. */
export const HULL_STATES = [
  'in build',
  'in stock',
  'on the way',
  'at dealer',
  'with owner',
  'exported',
  'scrapped',
] as const;
export type HullState = (typeof HULL_STATES)[number];

/** What may be said of a hull that a hold reached. */
export const HULL_DISPOSITIONS = ['found', 'checked', 'repaired', 'cleared', 'not reachable'] as const;
export type HullDisposition = (typeof HULL_DISPOSITIONS)[number];

const STATE_AFTER: Readonly<Record<string, HullState>> = {
  'part started': 'in build',
  demolded: 'in build',
  'HIN affixed': 'in build',
  released: 'in stock',
  returned: 'in stock',
  'left the place of manufacture': 'on the way',
  'at dealer': 'at dealer',
  'sold to first purchaser': 'with owner',
  'warranty registered': 'with owner',
  transferred: 'with owner',
  exported: 'exported',
  scrapped: 'scrapped',
};

/**
 * The state of a hull after the newest fact of its life; `in build` after none.
 *
 * A boat that left with a dealer's name on it is at that dealer: many shops record the one and not the other.
 */
export const hullStateAfter = (newest: string | null, dealer: string | null): HullState => {
  const state = newest === null ? 'in build' : (STATE_AFTER[newest] ?? 'in build');
  return state === 'on the way' && dealer !== null ? 'at dealer' : state;
};

/** Facts of a boat's life that say it has left the place of manufacture (46 USC 4310(b)); a return does not undo them. */
export const LEFT_FACTS = [
  'left the place of manufacture',
  'at dealer',
  'sold to first purchaser',
  'warranty registered',
  'transferred',
  'exported',
] as const;

/**
 * Whether a hull that a hold reached needs nothing more.
 *
 * `found` says that the fault is there and nothing more, so it leaves the hull open; a scrapped hull needs nothing.
 */
export const isDisposed = (state: HullState | null, newest: HullDisposition | null): boolean =>
  state === 'scrapped' || (newest !== null && newest !== 'found');

/** A hull as the figures of a hold count it. */
export interface CountedHull {
  readonly state: HullState | null;
  /** Newest last. */
  readonly said: readonly HullDisposition[];
}

/** How far the work of a hold has come. */
export interface HoldFigures {
  readonly reached: number;
  readonly disposed: number;
  readonly open: number;
  /** Looked at: the fault was found, or it was checked, or repaired. */
  readonly lookedAt: number;
  /** In which the fault was found, now or before. */
  readonly found: number;
  readonly repaired: number;
  readonly cleared: number;
  readonly notReachable: number;
}

/** Counts the hulls that a hold reaches, each by all that was said of it. A repair says that the fault was there. */
export const holdFigures = (hulls: readonly CountedHull[]): HoldFigures => {
  const count = (meets: (hull: CountedHull) => boolean): number => hulls.filter(meets).length;
  const ever =
    (...what: readonly HullDisposition[]) =>
    ({ said }: CountedHull): boolean =>
      said.some((each) => what.includes(each));
  const now =
    (what: HullDisposition) =>
    ({ said }: CountedHull): boolean =>
      said.at(-1) === what;
  const disposed = count(({ state, said }) => isDisposed(state, said.at(-1) ?? null));
  return {
    reached: hulls.length,
    disposed,
    open: hulls.length - disposed,
    lookedAt: count(ever('found', 'checked', 'repaired')),
    found: count(ever('found', 'repaired')),
    repaired: count(now('repaired')),
    cleared: count(now('cleared')),
    notReachable: count(now('not reachable')),
  };
};
