/** Badge and device that a plant is opened with: they register everybody and everything else. */
export const FIRST_BADGE = 'ADMIN';
export const FIRST_DEVICE = 'DESK';
