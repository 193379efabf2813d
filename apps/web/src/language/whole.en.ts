import { afterSaleEn } from './after-sale.en.js';
import { chartsEn } from '../charts/words.en.js';
import { en } from './en.js';

/** Every text of this app in English: what is fetched first, and what comes with some pages. */
export const wholeEn = { ...en, ...afterSaleEn, ...chartsEn } as const;
