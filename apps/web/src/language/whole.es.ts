import { afterSaleEs } from './after-sale.es.js';
import { chartsEs } from '../charts/words.es.js';
import { es } from './es.js';
import { modelsEs } from '../models/words.es.js';
import { scheduleEs } from '../models/schedule/words.es.js';

/** The same in Spanish. */
export const wholeEs = { ...es, ...afterSaleEs, ...chartsEs, ...modelsEs, ...scheduleEs };
