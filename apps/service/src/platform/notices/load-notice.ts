import type { EntityManager } from 'typeorm';
import { findHold, type FoundHold } from '../holds/find-hold.js';
import { loadHeldHulls, type HeldHulls } from '../holds/load-held-hulls.js';
import { findNotice, type FoundNotice } from './find-notice.js';
import { loadDuty, type Duty } from './load-duty.js';
import { loadNoticeState, type NoticeState } from './load-notice-state.js';

/** A notice with all that it rests on. */
export interface LoadedNotice {
  readonly notice: FoundNotice;
  readonly hold: FoundHold;
  readonly held: HeldHulls;
  readonly duty: Duty;
  readonly state: NoticeState;
}

/**
 * Loads a notice, by code or id.
 *
 * @param tx one transaction that sees one moment
 * @throws NotThere
 */
export const loadNotice = async (tx: EntityManager, name: string): Promise<LoadedNotice> => {
  const notice = await findNotice(tx, name);
  const hold = await findHold(tx, notice.hold);
  const held = await loadHeldHulls(tx, hold);
  const duty = await loadDuty(tx, hold.id, held);
  // Once the duty was decided away, the look-back counts from the last day that was decided, or from today.
  const from = duty.discoveredOn ?? duty.decisions.at(-1)?.discoveredOn ?? duty.today;
  return { notice, hold, held, duty, state: await loadNoticeState(tx, notice.id, held, from) };
};
