import { Column, Entity } from 'typeorm';
import type { DutyDecision, FollowUpFigures, MailingClass, RecipientKind } from '@hull-record/trade';
import type { NoticeContents } from '@hull-record/contracts';
import { FactRow } from '../platform/facts/fact-row.js';

/** What was decided about the duty to notify, by whom and why. Dates run from the newest that stands. */
@Entity({ schema: 'fact', name: 'duty_decision' })
export class DutyDecisionEntity extends FactRow {
  @Column('uuid', { name: 'hold_id' })
  holdId!: string;

  @Column('text')
  decision!: DutyDecision;

  @Column('date', { name: 'discovered_on' })
  discoveredOn!: string;

  @Column('uuid', { name: 'decided_by' })
  decidedBy!: string;

  @Column('text')
  why!: string;

  @Column('text', { nullable: true })
  rule!: string | null;

  @Column('text', { nullable: true })
  counsel!: string | null;
}

/** A notice of a defect, with what it says. */
@Entity({ schema: 'fact', name: 'notice' })
export class NoticeEntity extends FactRow {
  @Column('uuid', { name: 'hold_id' })
  holdId!: string;

  @Column('text')
  code!: string;

  @Column('jsonb')
  contents!: NoticeContents;
}

/** A letter of a notice that was mailed. Whom it went to stands in personal data; the fact names the owner's entry alone. */
@Entity({ schema: 'fact', name: 'notice_mailing' })
export class NoticeMailingEntity extends FactRow {
  @Column('uuid', { name: 'notice_id' })
  noticeId!: string;

  @Column('text', { name: 'to_what' })
  toWhat!: RecipientKind;

  @Column('uuid', { name: 'hull_id' })
  hullId!: string;

  @Column('uuid', { name: 'dealer_id', nullable: true })
  dealerId!: string | null;

  @Column('uuid', { name: 'owner_id', nullable: true })
  ownerId!: string | null;

  @Column('text')
  class!: MailingClass;

  @Column('text', { nullable: true })
  proof!: string | null;
}

/** A letter that came back. */
@Entity({ schema: 'fact', name: 'mailing_returned' })
export class MailingReturnedEntity extends FactRow {
  @Column('uuid', { name: 'mailing_id' })
  mailingId!: string;

  @Column('integer')
  turn!: number;

  @Column('text')
  why!: string;
}

/** A report that was sent to the authority, with the figures it gave. */
@Entity({ schema: 'fact', name: 'notice_report' })
export class NoticeReportEntity extends FactRow {
  @Column('uuid', { name: 'notice_id' })
  noticeId!: string;

  @Column('text')
  what!: 'initial' | 'follow-up';

  @Column('integer')
  turn!: number;

  @Column('date', { name: 'sent_on' })
  sentOn!: string;

  @Column('text', { nullable: true })
  proof!: string | null;

  @Column('jsonb')
  figures!: FollowUpFigures;
}
