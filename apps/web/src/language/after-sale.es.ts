import { casesEs } from '../cases/words.es.js';
import { claimsEs } from '../claims/words.es.js';
import { ownEs } from '../own-hulls/more-words.es.js';
import { ownersEs } from '../owners/words.es.js';
import { warrantyEs } from '../warranty/words.es.js';

/** The same in Spanish. */
export const afterSaleEs = { ...claimsEs, ...ownEs, ...ownersEs, ...warrantyEs, ...casesEs };
