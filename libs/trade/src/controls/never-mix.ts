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
 * @param added what goes in, in its order, each with the roles that are in it; resin that comes after both have met keeps
 *   nothing apart
 */
export const meetsWithoutResin = (added: readonly (readonly MaterialRole[])[]): boolean => {
  let [catalyst, promoter, resin] = [false, false, false];
  for (const roles of added) {
    resin ||= roles.some((role) => CARRIERS.includes(role));
    catalyst ||= roles.includes('catalyst');
    promoter ||= roles.includes('promoter');
    if (catalyst && promoter && !resin) return true;
  }
  return false;
};

/** Whether the promoter goes in before the catalyst: it is stirred into the resin first, and catalyst comes last. */
export const promoterComesFirst = (roles: readonly MaterialRole[]): boolean => {
  const catalyst = roles.indexOf('catalyst');
  return catalyst === -1 || roles.lastIndexOf('promoter') < catalyst;
};
