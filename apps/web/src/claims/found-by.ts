/** How a claim came to light; the last two are prompted. */
export const FOUND_BY = ['owner or dealer', 'inspection of a hold', 'after a notice'] as const;
