import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { NoticeView } from '@hull-record/contracts';
import { RECIPIENT_KINDS } from '@hull-record/trade';
import { readAsOne } from '../platform/database/read-as-one.js';
import { asReadBy } from '../platform/notices/counsel.js';
import { datesOf, WHO_DECIDES } from '../platform/notices/load-duty.js';
import { loadNotice } from '../platform/notices/load-notice.js';
import { unwritten, type NoticeState } from '../platform/notices/load-notice-state.js';
import { modelsOf } from '../platform/notices/models-of.js';

/** One notice, without personal data. */
@Injectable()
export class ReadNotice {
  constructor(private readonly db: DataSource) {}

  run(name: string): Promise<NoticeView> {
    return readAsOne(this.db, async (tx) => {
      const { notice, hold, duty, state } = await loadNotice(tx, name);
      const last = duty.decisions.at(-1);
      const numbers = (hulls: NoticeState['noticed']): string[] => hulls.map(({ hull }) => hull);
      return {
        ...{
          id: notice.id,
          code: notice.code,
          hold: hold.id,
          contents: notice.contents,
          happenedAt: notice.happenedAt,
        },
        decision: last === undefined ? null : asReadBy(last),
        arguable: [...duty.arguable],
        dates: [...datesOf(duty, state)],
        figures: state.figures,
        ...{ hulls: numbers(state.noticed), contained: numbers(state.contained), outside: numbers(state.outside) },
        withoutPurchaser: numbers(withoutPurchaser(state)),
        models: modelsOf(state.noticed),
        recipients: countsOf(state),
        reports: state.reports,
        says: WHO_DECIDES,
      };
    });
  }
}

/** Hulls that went to an owner, of whom nobody is registered as the first purchaser: the notice does not reach them. */
const withoutPurchaser = ({ noticed, addressees }: NoticeState): NoticeState['noticed'] =>
  noticed.filter(
    ({ owner, state }) =>
      (state === 'with owner' || state === 'exported') &&
      !addressees.some(({ kind, hullIds }) => kind === 'first purchaser' && hullIds.includes(owner)),
  );

const countsOf = ({ addressees }: NoticeState): NoticeView['recipients'] =>
  RECIPIENT_KINDS.map((kind) => {
    const own = addressees.filter((each) => each.kind === kind);
    return {
      ...{ kind, known: own.length },
      written: own.filter((each) => unwritten(each).length === 0).length,
      returned: own.filter(({ letters }) => letters.length > 0 && letters.every(({ returned }) => returned !== null))
        .length,
      noAddress: own.filter(({ hasAddress }) => !hasAddress).length,
    };
  });
