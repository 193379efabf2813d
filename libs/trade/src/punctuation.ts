/**
 * Upper-cases a number and drops what people put between its characters: spaces, hyphens, dashes and slashes.
 *
 * Dashes include the look-alikes that keyboards and word processors put in for a hyphen.
 */
export const stripPunctuation = (text: string): string =>
  text.toUpperCase().replace(/[\s\-\u00ad\u2010-\u2015\u2212/\\]/g, '');
