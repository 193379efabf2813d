import { Injectable } from '@nestjs/common';
import type { WithdrawCertificate as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../../platform/facts/record-fact.js';
import { isUuid } from '../../platform/ids.js';
import { NotThere } from '../../platform/refusals.js';
import { CertificateEntity, CertificateWithdrawnEntity } from './certificate.entities.js';

/** Withdraws an issue of a certificate: whoever checks it is told so from then on. */
@Injectable()
export class WithdrawCertificate {
  constructor(private readonly record: RecordFact) {}

  run(certificate: string, request: Request): Promise<Receipt<{ withdrawn: true }>> {
    return this.record.run('certificate withdrawn', { ...request, certificate }, async (fact) => {
      const found = isUuid(certificate) ? await fact.tx.findOneBy(CertificateEntity, { id: certificate }) : null;
      if (!found || found.plantId !== fact.author.plantId) throw new NotThere('certificate', certificate);
      await fact.insert(CertificateWithdrawnEntity, {
        ...{ certificateId: found.id, reason: request.reason, becauseOf: null, changed: null },
      });
      return { withdrawn: true as const };
    });
  }
}
