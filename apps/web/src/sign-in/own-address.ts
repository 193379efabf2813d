/** An address of this app; what would lead to another site leads to the start. */
export const ownAddress = (from: string): string => (/^\/(?![/\\])/.test(from) ? from : '/');
