import { Injectable } from '@nestjs/common';
import type { ReportFigures, ReportNotice as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { loadNotice, type LoadedNotice } from '../platform/notices/load-notice.js';
import { Unprocessable } from '../platform/refusals.js';
import { NoticeReportEntity } from './notice.entity.js';

/** Records that a report was sent to the authority, with the figures as they stood. */
@Injectable()
export class ReportNotice {
  constructor(private readonly record: RecordFact) {}

  run(notice: string, request: Request): Promise<Receipt<{ what: string; figures: ReportFigures }>> {
    return this.record.run('report to the authority sent', { ...request, notice }, async (fact) => {
      const loaded = await loadNotice(fact.tx, notice);
      assertSent(loaded, request);
      const { what, sentOn, proof = null } = request;
      const { figures } = loaded.state;
      const turn = await nextTurn(fact, loaded.notice.id, what);
      await fact.insert(NoticeReportEntity, { noticeId: loaded.notice.id, what, turn, sentOn, proof, figures });
      return { what, figures };
    });
  }
}

const assertSent = ({ duty, state }: LoadedNotice, { what, sentOn }: Request): void => {
  if (sentOn > duty.today)
    throw new Unprocessable('not-sent-yet', `Today is ${duty.today}: record it when it is sent.`, '/sentOn');
  if (duty.discoveredOn !== null && sentOn < duty.discoveredOn)
    throw new Unprocessable(
      'before-discovery',
      `The day of discovery is ${duty.discoveredOn}: no report was sent before it. Look at the day and the year.`,
      '/sentOn',
    );
  const initial = state.reports.find((report) => report.what === 'initial');
  if (what === 'follow-up' && (initial === undefined || sentOn < initial.sentOn))
    throw new Unprocessable(
      'no-initial-report',
      'A follow-up report names the initial report, 33 CFR 179.15(a)(1): record that first.',
      '/what',
    );
};

/** One more than the reports of this kind that no longer stand: the unique key refuses a second that would stand. */
const nextTurn = async (fact: Fact, noticeId: string, what: string): Promise<number> => {
  const [{ turn }] = await fact.tx.query<[{ turn: number }]>(
    `select count(*)::int + 1 as turn from fact.notice_report r where r.notice_id = $1 and r.what = $2 and not (${standing('r')})`,
    [noticeId, what],
  );
  return turn;
};
