import { Injectable, Logger } from '@nestjs/common';
import type { CertificateContent, CheckCertificate as Request, CheckedCertificate } from '@hull-record/contracts';
import { setTimeout as pause } from 'node:timers/promises';
import { DataSource } from 'typeorm';
import { callNow } from '../../platform/access/call.js';
import { digestOfCode, readCode } from './code.js';
import { stateOf } from './states.sql.js';
import { CheckThrottle } from './check-throttle.js';

const COLUMNS = `c.number, c.content, ${stateOf('c')} as state,
  (select max(n.issue) from fact.certificate n join fact.certificate_file nf on nf.certificate_id = n.id
   where n.hull_id = c.hull_id) as newest`;

const BY_CODE = `select ${COLUMNS} from fact.certificate c
  where c.code_digest = $1 and ($2::text is null or upper(c.number) = upper($2))`;

const BY_FILE = `select ${COLUMNS} from fact.certificate c
  join fact.certificate_file f on f.certificate_id = c.id where f.sha256 = $1`;

interface Row {
  readonly number: string;
  readonly content: string;
  readonly state: CheckedCertificate['is'] | 'being made';
  readonly newest: number | null;
}

const NOT_KNOWN: CheckedCertificate = { is: 'not known', certificate: null, newestIssue: null };

/**
 * Says to anybody whether a certificate is genuine and current: nothing of holds, nothing of people, and of a hull only
 * what the paper says of it.
 */
@Injectable()
export class CheckCertificate {
  private readonly log = new Logger('certificate checks');

  constructor(
    private readonly db: DataSource,
    private readonly throttle: CheckThrottle,
  ) {}

  /** @throws TooManyTries */
  async run({ number, code, sha256 }: Request): Promise<CheckedCertificate> {
    const from = callNow().http?.request.ip ?? 'unknown';
    this.throttle.count(from);
    const [row] =
      code === undefined
        ? await this.db.query<Row[]>(BY_FILE, [sha256])
        : await this.db.query<Row[]>(BY_CODE, [digestOfCode(readCode(code)), number ?? null]);
    if (!row || row.state === 'being made') {
      const waitMs = this.throttle.missed(from);
      this.log.warn(`A certificate was asked for that is not known, from ${from}.`);
      await pause(waitMs);
      return NOT_KNOWN;
    }
    const { issue, issuedOn, hull, hin, model } = JSON.parse(row.content) as CertificateContent;
    return {
      is: row.state,
      certificate: { number: row.number, issue, issuedOn, hull, hin, model },
      newestIssue: row.newest,
    };
  }
}
