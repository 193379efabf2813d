import { afterSaleEn } from './after-sale.en.js';
import { chartsEn } from '../charts/words.en.js';
import { en } from './en.js';
import { modelsEn } from '../models/words.en.js';
import { scheduleEn } from '../models/schedule/words.en.js';

/** Every text of this app in English: what is fetched first, and what comes with some pages. */
export const wholeEn = { ...en, ...afterSaleEn, ...chartsEn, ...modelsEn, ...scheduleEn } as const;
