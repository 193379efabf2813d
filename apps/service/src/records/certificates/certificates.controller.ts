import { Body, Controller, Param } from '@nestjs/common';
import {
  type CheckCertificate as CheckRequest,
  type IssueCertificate as IssueRequest,
  routes,
  type WithdrawCertificate as WithdrawRequest,
} from '@hull-record/contracts';
import { Route } from '../../platform/http/route.js';
import { pdfAnswer } from '../../platform/papers/pdf-answer.js';
import { CheckCertificate } from './check-certificate.query.js';
import { IssueCertificate } from './issue-certificate.js';
import { ListCertificates } from './list-certificates.query.js';
import { ReadCertificate } from './read-certificate.query.js';
import { WithdrawCertificate } from './withdraw-certificate.js';

@Controller()
export class CertificatesController {
  constructor(
    private readonly issueOne: IssueCertificate,
    private readonly listAll: ListCertificates,
    private readonly reading: ReadCertificate,
    private readonly withdrawOne: WithdrawCertificate,
    private readonly checking: CheckCertificate,
  ) {}

  @Route(routes.issueCertificate)
  issue(@Param('number') number: string, @Body({ schema: routes.issueCertificate.body }) request: IssueRequest) {
    return this.issueOne.run(number, request);
  }

  @Route(routes.listCertificates)
  list(@Param('number') number: string) {
    return this.listAll.run(number);
  }

  @Route(routes.readCertificate)
  async read(@Param('certificate') certificate: string) {
    const { pdf, name } = await this.reading.run(certificate);
    return pdfAnswer(pdf, 'certificate', name);
  }

  @Route(routes.withdrawCertificate)
  withdraw(
    @Param('certificate') certificate: string,
    @Body({ schema: routes.withdrawCertificate.body }) request: WithdrawRequest,
  ) {
    return this.withdrawOne.run(certificate, request);
  }

  @Route(routes.checkCertificate)
  check(@Body({ schema: routes.checkCertificate.body }) request: CheckRequest) {
    return this.checking.run(request);
  }

  @Route(routes.readOwnCertificate)
  async own(@Param('number') number: string) {
    const { pdf, name } = await this.reading.own(number);
    return pdfAnswer(pdf, 'certificate', name);
  }
}
