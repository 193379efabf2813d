import { Module } from '@nestjs/common';
import { DecideDuty } from './decide-duty.js';
import { GiveNotice } from './give-notice.js';
import { ListRecipients } from './list-recipients.query.js';
import { MailNotice } from './mail-notice.js';
import { NoticesController } from './notices.controller.js';
import { ReadDuty } from './read-duty.query.js';
import { ReadNotice } from './read-notice.query.js';
import { ReportNotice } from './report-notice.js';
import { ReturnMailing } from './return-mailing.js';

/** The duty to notify, notices of a defect, whom they go to, and what was sent. */
@Module({
  controllers: [NoticesController],
  providers: [DecideDuty, GiveNotice, MailNotice, ReturnMailing, ReportNotice, ReadDuty, ReadNotice, ListRecipients],
})
export class NoticesModule {}
