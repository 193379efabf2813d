import { daysAfter } from './days.js';

/**
 * The day by which a person who asks for the own data is answered: 30 days later.
 *
 * Regulation (EU) 2016/679, Art. 12(3), says one month, and other laws have other periods (from memory, confirm against
 * the law that applies): a reminder that stops nobody. Throws NotACalendarDate.
 */
export const answerBy = (askedOn: string): string => daysAfter(askedOn, 30);
