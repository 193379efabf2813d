import { Body, Controller, Param } from '@nestjs/common';
import {
  routes,
  type DecideDuty as DutyRequest,
  type GiveNotice as NoticeRequest,
  type MailNotice as MailRequest,
  type ReportNotice as ReportRequest,
  type ReturnMailing as ReturnRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { DecideDuty } from './decide-duty.js';
import { GiveNotice } from './give-notice.js';
import { ListRecipients } from './list-recipients.query.js';
import { MailNotice } from './mail-notice.js';
import { ReadDuty } from './read-duty.query.js';
import { ReadNotice } from './read-notice.query.js';
import { ReportNotice } from './report-notice.js';
import { ReturnMailing } from './return-mailing.js';

@Controller()
export class NoticesController {
  constructor(
    private readonly decideDuty: DecideDuty,
    private readonly giveNotice: GiveNotice,
    private readonly mailNotice: MailNotice,
    private readonly returnMailing: ReturnMailing,
    private readonly reportNotice: ReportNotice,
    private readonly readDuty: ReadDuty,
    private readonly readNotice: ReadNotice,
    private readonly listRecipients: ListRecipients,
  ) {}

  @Route(routes.decideDuty)
  decide(@Param('hold') hold: string, @Body({ schema: routes.decideDuty.body }) request: DutyRequest) {
    return this.decideDuty.run(hold, request);
  }

  @Route(routes.readDuty)
  duty(@Param('hold') hold: string) {
    return this.readDuty.run(hold);
  }

  @Route(routes.giveNotice)
  give(@Param('hold') hold: string, @Body({ schema: routes.giveNotice.body }) request: NoticeRequest) {
    return this.giveNotice.run(hold, request);
  }

  @Route(routes.readNotice)
  read(@Param('notice') notice: string) {
    return this.readNotice.run(notice);
  }

  @Route(routes.listRecipients)
  recipients(@Param('notice') notice: string) {
    return this.listRecipients.run(notice);
  }

  @Route(routes.mailNotice)
  mail(@Param('notice') notice: string, @Body({ schema: routes.mailNotice.body }) request: MailRequest) {
    return this.mailNotice.run(notice, request);
  }

  @Route(routes.returnMailing)
  returned(@Param('mailing') mailing: string, @Body({ schema: routes.returnMailing.body }) request: ReturnRequest) {
    return this.returnMailing.run(mailing, request);
  }

  @Route(routes.reportNotice)
  report(@Param('notice') notice: string, @Body({ schema: routes.reportNotice.body }) request: ReportRequest) {
    return this.reportNotice.run(notice, request);
  }
}
