import { isExpired } from '@hull-record/trade';
import type { FoundLot } from './find-lots.js';

/** A rule that was broken, and how. */
export interface BrokenRule {
  readonly rule: string;
  readonly detail: string;
}

/**
 * What using a lot breaks: an expired lot (no batch later than its expiry, LR Rules for Materials 2022 Ch 14 Sec 5.3.4),
 * or one that was not released.
 */
export const brokenLotRules = (lot: FoundLot): readonly BrokenRule[] => {
  const broken: BrokenRule[] = [];
  if (lot.expiresOn !== null && isExpired(lot.expiresOn, lot.takenOn)) {
    broken.push({
      rule: 'expired-lot',
      detail: `Lot ${lot.code} expired on ${lot.expiresOn} and was used on ${lot.takenOn}.`,
    });
  }
  if (lot.state !== 'released') {
    broken.push({ rule: 'lot-not-released', detail: `Lot ${lot.code} was ${lot.state} when it was used.` });
  }
  for (const hold of lot.holds)
    broken.push({
      rule: hold.startsWith('safety') ? 'lot-on-safety-hold' : 'lot-on-hold',
      detail: `Lot ${lot.code} was on hold (${hold}) when it was used.`,
    });
  for (const container of lot.rejected)
    broken.push({
      rule: 'container-rejected',
      detail: `Container ${container} of lot ${lot.code} had been rejected when it was used.`,
    });
  if (lot.notYetThere) {
    broken.push({ rule: 'used-before-it-came', detail: `Lot ${lot.code} was used before it came or was made.` });
  }
  if (lot.origin === 'unidentified') {
    broken.push({
      rule: 'unidentified-material',
      detail: `Lot ${lot.code} stands for material that nobody could name.`,
    });
  }
  return broken;
};
