import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { DutyView } from '@hull-record/contracts';
import { readAsOne } from '../platform/database/read-as-one.js';
import { findHold } from '../platform/holds/find-hold.js';
import { loadHeldHulls } from '../platform/holds/load-held-hulls.js';
import { asReadBy } from '../platform/notices/counsel.js';
import { datesOf, loadDuty, WHO_DECIDES } from '../platform/notices/load-duty.js';
import { loadNoticeState } from '../platform/notices/load-notice-state.js';

/** The duty to notify as decided for a hold; the dates are those of its newest notice. */
@Injectable()
export class ReadDuty {
  constructor(private readonly db: DataSource) {}

  run(hold: string): Promise<DutyView> {
    return readAsOne(this.db, async (tx) => {
      const found = await findHold(tx, hold);
      const held = await loadHeldHulls(tx, found);
      const duty = await loadDuty(tx, found.id, held);
      const newest = duty.notices.at(-1);
      const state =
        newest === undefined || duty.discoveredOn === null
          ? null
          : await loadNoticeState(tx, newest.id, held, duty.discoveredOn);
      return {
        decisions: duty.decisions.map(asReadBy),
        arguable: [...duty.arguable],
        dates: [...datesOf(duty, state)],
        notices: duty.notices,
        says: WHO_DECIDES,
      };
    });
  }
}
