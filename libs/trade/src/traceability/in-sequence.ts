import { isExpired, requireCalendarDate } from '../calendar.js';

/** A lot of one material as it stands in the store. */
export interface StoredLot {
  readonly code: string;
  /** Calendar day YYYY-MM-DD. */
  readonly receivedOn: string;
  readonly expiresOn: string | null;
}

/**
 * Lots of the same material that came earlier, have not expired and still stand there, when another is used on a day.
 *
 * Batches are used "systematically and sequentially" (LR Rules for Materials, July 2022, Ch 14 Sec 5, 5.3.5): a warning,
 * never a stop. Throws NotACalendarDate.
 */
export const passedOver = (used: StoredLot, others: readonly StoredLot[], on: string): readonly string[] =>
  others
    .filter(({ receivedOn }) => requireCalendarDate(receivedOn) < requireCalendarDate(used.receivedOn))
    .filter(({ expiresOn }) => expiresOn === null || !isExpired(expiresOn, on))
    .map(({ code }) => code);
