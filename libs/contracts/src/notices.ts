import { z } from 'zod';
import { DUTY_DECISIONS, MAILING_CLASSES, RECIPIENT_KINDS } from '@hull-record/trade';
import { Code, Day, Envelope, Instant, NewCode, Text, receipt } from './envelope.js';

const Long = z.string().trim().min(1).max(8_000);

/** Says what was decided about the duty to notify (46 USC 4310(b)): by whom, when it was discovered, and why. */
export const DecideDuty = Envelope.extend({
  decision: z.enum(DUTY_DECISIONS).describe('there is no default: the responsible person decides, with counsel'),
  discoveredOn: Day.describe('day of discovery, in the calendar of the plant: the dates of the notice run from it'),
  decidedBy: Code.describe('badge of the responsible person'),
  why: Text,
  rule: Text.optional().describe('which regulation it fails; required for "fails a rule"'),
  counsel: Text.optional().describe('with which advice, such as the date of a letter'),
})
  .refine(({ decision, rule }) => decision !== 'fails a rule' || rule !== undefined, {
    path: ['rule'],
    message: 'say which',
  })
  .meta({ id: 'DecideDuty' });
export type DecideDuty = z.output<typeof DecideDuty>;
export const DutyReceipt = receipt('DutyReceipt', z.object({ decision: z.string(), noticeDue: Day.nullable() }));
export type DutyReceipt = z.output<typeof DutyReceipt>;

/** What a notice says: 46 USC 4310(d) and 33 CFR 179.09. The models, months and numbers of hulls are put in by the record. */
export const NoticeContents = z
  .object({
    defect: Long.describe('description of the defect'),
    hazard: Long.describe('evaluation of the hazard'),
    measures: Long.describe('measures to correct it'),
    undertaking: Long.describe("undertaking to correct it at the maker's cost"),
    manufacturer: Text,
    address: Text.describe('of the manufacturer'),
    make: Text,
    contact: Text.optional().describe('whom to call or write to'),
  })
  .meta({ id: 'NoticeContents' });
export type NoticeContents = z.output<typeof NoticeContents>;

export const GiveNotice = Envelope.extend({ code: NewCode, contents: NoticeContents }).meta({ id: 'GiveNotice' });
export type GiveNotice = z.output<typeof GiveNotice>;
export const NoticeReceipt = receipt('NoticeReceipt', z.object({ code: z.string(), recipients: z.number() }));
export type NoticeReceipt = z.output<typeof NoticeReceipt>;

/** Letters of a notice that were mailed, all by one class of mail. */
export const MailNotice = Envelope.extend({
  class: z.enum(MAILING_CLASSES),
  recipients: z
    .array(
      z
        .object({
          hull: Code,
          dealer: Code.optional(),
          owner: z.uuid().optional(),
          proof: Text.optional().describe('such as the number of the certified letter; no personal data here'),
        })
        .refine(({ dealer, owner }) => (dealer === undefined) !== (owner === undefined), {
          path: ['owner'],
          message: 'name a dealer or an owner',
        }),
    )
    .min(1)
    .max(1_000),
}).meta({ id: 'MailNotice' });
export type MailNotice = z.output<typeof MailNotice>;
export const MailingReceipt = receipt('MailingReceipt', z.object({ mailed: z.number() }));
export type MailingReceipt = z.output<typeof MailingReceipt>;

/** A letter came back. */
export const ReturnMailing = Envelope.extend({ why: Text.describe('no personal data here') }).meta({
  id: 'ReturnMailing',
});
export type ReturnMailing = z.output<typeof ReturnMailing>;
export const ReturnReceipt = receipt('ReturnReceipt', z.object({ returned: z.literal(true) }));
export type ReturnReceipt = z.output<typeof ReturnReceipt>;

/** A report to the authority was sent. */
export const ReportNotice = Envelope.extend({
  what: z.enum(['initial', 'follow-up']),
  sentOn: Day,
  proof: Text.optional().describe('number of the certified letter'),
}).meta({ id: 'ReportNotice' });
export type ReportNotice = z.output<typeof ReportNotice>;

/** Figures of the initial and the follow-up report. */
export const ReportFigures = z
  .object({
    affected: z.number().describe('best estimate of the total number potentially affected, 33 CFR 179.13'),
    discovered: z.number().describe('units in which the defect was discovered, 33 CFR 179.15(a)(2)'),
    completed: z.number().describe('units in which correction is completed, 33 CFR 179.15(a)(3)'),
    notNotified: z
      .number()
      .describe('first purchasers not notified because of an out-of-date name or address, 33 CFR 179.15(a)(4)'),
  })
  .meta({ id: 'ReportFigures' });
export type ReportFigures = z.output<typeof ReportFigures>;
export const ReportReceipt = receipt('ReportReceipt', z.object({ what: z.string(), figures: ReportFigures }));
export type ReportReceipt = z.output<typeof ReportReceipt>;

const DutyDecisionView = z.object({
  id: z.uuid(),
  decision: z.enum(DUTY_DECISIONS),
  discoveredOn: Day,
  decidedBy: z.string(),
  why: z.string(),
  rule: z.string().nullable(),
  counsel: z.string().nullable().describe('null too for who neither decides on duties nor gives notices'),
  happenedAt: Instant,
});

const DueDate = z
  .object({
    what: z.enum(['notice', 'initial report', 'follow-up report']),
    dueOn: Day.nullable(),
    doneOn: Day.nullable(),
    state: z.enum(['does not run', 'due', 'late', 'done in time', 'done late']),
    days: z.number().nullable().describe('until it is due; negative when that day is past'),
    source: z.string(),
  })
  .meta({ id: 'DueDate' });

const ArguableDay = z.object({ on: Day, what: z.string() });

/** The duty to notify as it was decided for a hold, and what the record knows beside it. It decides nothing itself. */
export const DutyView = z
  .object({
    decisions: z.array(DutyDecisionView).describe('the last one stands'),
    arguable: z
      .array(ArguableDay)
      .describe('days from which somebody might argue that the builder knew, the earliest first'),
    dates: z.array(DueDate),
    notices: z.array(z.object({ id: z.uuid(), code: z.string(), happenedAt: Instant })),
    says: z.string(),
  })
  .meta({ id: 'DutyView' });
export type DutyView = z.output<typeof DutyView>;

const counted = z.object({
  kind: z.enum(RECIPIENT_KINDS),
  known: z.number(),
  written: z.number(),
  returned: z.number().describe('written to, and every letter came back'),
  noAddress: z.number().describe('no address is kept'),
});

export const NoticeView = z
  .object({
    id: z.uuid(),
    code: z.string(),
    hold: z.uuid(),
    contents: NoticeContents,
    happenedAt: Instant,
    decision: DutyDecisionView.nullable(),
    arguable: z.array(ArguableDay),
    dates: z.array(DueDate),
    figures: ReportFigures,
    hulls: z.array(z.string()).describe('that have left the place of manufacture, inside the look-back'),
    contained: z.array(z.string()).describe('that have not left: held, and not counted'),
    outside: z.array(z.string()).describe('made more than ten years before discovery, 46 USC 4310(c)(2)'),
    withoutPurchaser: z.array(z.string()).describe('sold, and no first purchaser is registered'),
    models: z
      .array(z.object({ model: z.string(), from: z.string(), until: z.string() }))
      .describe('months of manufacture'),
    recipients: z.array(counted),
    reports: z.array(
      z.object({ id: z.uuid(), what: z.string(), sentOn: Day, proof: z.string().nullable(), figures: ReportFigures }),
    ),
    says: z.string(),
  })
  .meta({ id: 'NoticeView' });
export type NoticeView = z.output<typeof NoticeView>;

/** Somebody a notice goes to, with personal data: for who may see owners alone. */
export const Recipient = z
  .object({
    kind: z.enum(RECIPIENT_KINDS),
    hulls: z.array(z.string()),
    dealer: z.string().nullable(),
    owner: z.uuid().nullable(),
    name: z.string().nullable().describe('null: erased'),
    address: z.string().nullable(),
    email: z.string().nullable(),
    state: z.enum(['to write to', 'written to', 'returned', 'no address']),
    mailings: z.array(
      z.object({
        id: z.uuid(),
        hull: z.string(),
        class: z.string(),
        proof: z.string().nullable(),
        happenedAt: Instant,
        returned: z.object({ why: z.string(), happenedAt: Instant }).nullable(),
      }),
    ),
  })
  .meta({ id: 'Recipient' });
export type Recipient = z.output<typeof Recipient>;
