import { claimsEn } from '../claims/words.en.js';
import { warrantyEn } from '../warranty/words.en.js';

/** Texts that only the pages of claims and warranty terms say: they are fetched with those pages. */
export const afterSaleEn = { ...claimsEn, ...warrantyEn } as const;
