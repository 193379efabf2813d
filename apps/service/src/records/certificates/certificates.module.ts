import { Module } from '@nestjs/common';
import { CertificatesController } from './certificates.controller.js';
import { CheckCertificate } from './check-certificate.query.js';
import { CheckThrottle } from './check-throttle.js';
import { FinishCertificates } from './finish-certificates.js';
import { IssueCertificate } from './issue-certificate.js';
import { ListCertificates } from './list-certificates.query.js';
import { ReadCertificate } from './read-certificate.query.js';
import { WithdrawAfterCorrection } from './withdraw-after-correction.js';
import { WithdrawCertificate } from './withdraw-certificate.js';

/** Certificates of hulls: issued, signed, checked by anybody, withdrawn. */
@Module({
  controllers: [CertificatesController],
  providers: [
    ...[IssueCertificate, FinishCertificates, ListCertificates, ReadCertificate, WithdrawCertificate, CheckCertificate],
    WithdrawAfterCorrection,
    { provide: CheckThrottle, useFactory: () => new CheckThrottle() },
  ],
})
export class CertificatesModule {}
