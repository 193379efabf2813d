import { casesEn } from '../cases/words.en.js';
import { claimsEn } from '../claims/words.en.js';
import { warrantyEn } from '../warranty/words.en.js';

/** Texts that only the pages of claims, warranty terms and cases say: they are fetched with those pages. */
export const afterSaleEn = { ...claimsEn, ...warrantyEn, ...casesEn } as const;
