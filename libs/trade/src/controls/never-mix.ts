import type { MaterialRole } from '../material-roles.js';

/** The caution that goes with it, word for word, on every screen and paper. */
export const NEVER_MIX = 'Never mix catalyst and promoter directly.';

const CARRIERS: readonly MaterialRole[] = ['resin', 'gel coat', 'putty', 'bonding paste'];

/**
 * Whether catalyst and promoter would meet without resin between them: a stop that nothing lifts.
 *
 * Makers' data sheets and common practice: promoter goes into the resin first, catalyst last, never the two together,
 * since a peroxide and a metal promoter react violently.
 *
 * @param roles what goes into the mix, in the order it goes in; what resin there is counts from where it stands
 */
export const meetsWithoutResin = (roles: readonly MaterialRole[]): boolean =>
  roles.includes('catalyst') && roles.includes('promoter') && !roles.some((role) => CARRIERS.includes(role));

/** Whether the promoter goes in before the catalyst: it is stirred into the resin first, and catalyst comes last. */
export const promoterComesFirst = (roles: readonly MaterialRole[]): boolean => {
  const catalyst = roles.indexOf('catalyst');
  return catalyst === -1 || roles.lastIndexOf('promoter') < catalyst;
};
