import type { DemoHull } from './parts.js';

/** The resin lot that turns out bad: it went into the tank, and its heels into much that followed. */
export const BAD_LOT = 'VE-12';

/** What of the bad lot was set aside in drums when the rest went into the tank, kg. */
export const SET_ASIDE_KG = 84;

/**
 * Hulls, by their index, whose skin coat came from those drums, weeks after the tank held other lots.
 *
 * Without them the bad lot would be in the same hulls as whatever else was used in its weeks, and no arithmetic could
 * tell it from them.
 */
const FROM_SET_ASIDE: readonly number[] = [51, 58];

export const isFromSetAside = ({ index }: DemoHull): boolean => FROM_SET_ASIDE.includes(index);
