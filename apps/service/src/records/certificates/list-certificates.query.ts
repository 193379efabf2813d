import { Injectable } from '@nestjs/common';
import type { CertificateView } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { findHull } from '../../platform/lookups/find-hull.js';
import { stateOf } from './states.sql.js';

const LIST = `
  select c.id, c.number, c.issue, c.recorded_at as "issuedAt", ${stateOf('c')} as state,
    w.reason as "withdrawnFor", w.because_of as "becauseOf", w.changed,
    f.sha256, '/api/certificates/' || f.certificate_id || '/file.pdf' as file
  from fact.certificate c left join fact.certificate_file f on f.certificate_id = c.id
  left join fact.certificate_withdrawn w on w.certificate_id = c.id
  where c.hull_id = $1 order by c.issue desc`;

/** The issues of the certificate of a hull, the newest first. */
@Injectable()
export class ListCertificates {
  constructor(private readonly db: DataSource) {}

  async run(number: string): Promise<CertificateView[]> {
    return this.db.query(LIST, [await findHull(this.db.manager, number)]);
  }
}
