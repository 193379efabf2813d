import { casesEn } from '../cases/words.en.js';
import { claimsEn } from '../claims/words.en.js';
import { ownEn } from '../own-hulls/more-words.en.js';
import { ownersEn } from '../owners/words.en.js';
import { warrantyEn } from '../warranty/words.en.js';

/** Texts that only the pages of claims, owners, warranty terms and cases say: they are fetched with those pages. */
export const afterSaleEn = { ...claimsEn, ...ownEn, ...ownersEn, ...warrantyEn, ...casesEn } as const;
