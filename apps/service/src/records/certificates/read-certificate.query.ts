import { Injectable } from '@nestjs/common';
import { normaliseNumber } from '@hull-record/trade';
import { Readable } from 'node:stream';
import { DataSource } from 'typeorm';
import { personNow } from '../../platform/access/call.js';
import { standing } from '../../platform/facts/standing.js';
import { isUuid } from '../../platform/ids.js';
import { lastDealerOf } from '../../platform/life/own-hull.sql.js';
import { PhotoStore } from '../../platform/photos/photo-store.js';
import { NotThere } from '../../platform/refusals.js';

/** A certificate as it was signed. */
export interface CertificatePaper {
  readonly name: string;
  readonly pdf: Readable;
}

interface Row {
  readonly number: string;
  readonly issue: number;
  readonly sha256: string;
}

const ONE = `
  select c.number, c.issue, f.sha256 from fact.certificate c join fact.certificate_file f on f.certificate_id = c.id
  where c.id = $1`;

const OWN = `
  select c.number, c.issue, f.sha256 from fact.hull h
  join fact.hull_number k on k.hull_id = h.id and k.normalised = $1
  join fact.certificate c on c.hull_id = h.id join fact.certificate_file f on f.certificate_id = c.id
  where ${standing('h')} and ${lastDealerOf('h.id')} = $2 order by c.issue desc limit 1`;

/** Gives out the file of a certificate. */
@Injectable()
export class ReadCertificate {
  constructor(
    private readonly db: DataSource,
    private readonly store: PhotoStore,
  ) {}

  /** @throws NotThere also while it is being made */
  async run(certificate: string): Promise<CertificatePaper> {
    const [row] = isUuid(certificate) ? await this.db.query<Row[]>(ONE, [certificate]) : [];
    return this.file(row, certificate);
  }

  /** The newest issue of a hull that the dealer who asks has or had last. */
  async own(number: string): Promise<CertificatePaper> {
    const [row] = await this.db.query<Row[]>(OWN, [normaliseNumber(number), personNow().dealerId]);
    return this.file(row, `of hull ${number}`);
  }

  private async file(row: Row | undefined, asked: string): Promise<CertificatePaper> {
    if (!row) throw new NotThere('certificate', asked);
    const content = await this.store.read(row.sha256);
    if (!content) throw new Error(`The file of certificate ${row.number}, issue ${row.issue}, is missing or changed.`);
    return { name: `${row.number}-${row.issue}`, pdf: Readable.from([content]) };
  }
}
