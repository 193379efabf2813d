import { Injectable } from '@nestjs/common';
import type { CertificateContent, IssueCertificate as Request } from '@hull-record/contracts';
import { canonicalJson } from '@hull-record/evidence';
import type { EntityManager } from 'typeorm';
import type { Fact } from '../../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../../platform/facts/record-fact.js';
import { standing } from '../../platform/facts/standing.js';
import { findHull } from '../../platform/lookups/find-hull.js';
import { Conflict } from '../../platform/refusals.js';
import { obstaclesOf } from '../../platform/release/obstacles.js';
import { NOW } from '../../platform/views/making.js';
import { loadHull } from '../load-hull.js';
import { loadRecordFacts } from '../record-facts.js';
import { CertificateCodeEntity, CertificateEntity } from './certificate.entities.js';
import { digestOfCode, newCode } from './code.js';
import { CertificatePage, draw, pagesOf } from './draw.js';
import { FinishCertificates } from './finish-certificates.js';
import { whyOutOfTime } from './out-of-time.js';
import { SigningKey } from './signing-key.js';
import { type OfIssue, wordCertificate } from './word-certificate.js';

/** How many layers are tried to be printed, until all is on one page. */
const ROOMS = [40, 30, 22, 16, 11, 7, 4] as const;

const LAST = 'select number, max(issue) as issue from fact.certificate where hull_id = $1 group by number';
const TAKEN = 'select count(distinct number)::int as taken from fact.certificate where plant_id = $1';

/** Issues the certificate of a released hull: records what it prints, and has the file made once that is sealed. */
@Injectable()
export class IssueCertificate {
  constructor(
    private readonly record: RecordFact,
    private readonly signing: SigningKey,
    private readonly page: CertificatePage,
    private readonly finish: FinishCertificates,
  ) {}

  async run(number: string, request: Request): Promise<Receipt<{ content: CertificateContent }>> {
    const receipt = await this.record.run(
      'certificate issued',
      { ...request, number },
      async (fact) => ({ content: await this.issue(fact, number) }),
      { gate: 'closed' },
    );
    if (!receipt.replayed) await this.finish.orLater();
    return receipt;
  }

  private async issue(fact: Fact, number: string): Promise<CertificateContent> {
    const hullId = await findHull(fact.tx, number);
    const releasedAt = await assertReleased(fact.tx, hullId, number);
    await assertNothingOpen(fact.tx, hullId, number);
    const given = await numberOf(fact, hullId);
    const hull = await loadHull(fact.tx, hullId, NOW);
    const signer = await this.signing.load(hull?.plant ?? '');
    const outOfTime = whyOutOfTime(signer, fact.recordedAt);
    if (outOfTime !== null) throw new Conflict('signing-certificate-out-of-time', outOfTime);
    const of = { ...given, releasedAt, issuedAt: fact.recordedAt, signedBy: signer.fingerprint };
    const code = newCode();
    const content = await this.onOnePage(fact, hullId, of, code);
    const id = await fact.insert(CertificateEntity, {
      ...given,
      hullId,
      codeDigest: digestOfCode(code),
      content: canonicalJson(content),
    });
    await fact.tx.insert(CertificateCodeEntity, { certificateId: id, code });
    return content;
  }

  /** Words it with as much as fits: it is drawn to see that, without its proof. */
  private async onOnePage(
    { tx, recordedAt }: Fact,
    hullId: string,
    of: Omit<OfIssue, 'room'>,
    code: string,
  ): Promise<CertificateContent> {
    const hull = await loadHull(tx, hullId, NOW);
    if (!hull) throw new Error('A hull that was found has no row.');
    const facts = await loadRecordFacts(tx, hull, NOW);
    for (const room of ROOMS) {
      const content = wordCertificate(facts, { ...of, room });
      const pdf = await draw(content, this.page, code, Buffer.from('{}'), recordedAt);
      if (pagesOf(pdf) === 1) return content;
    }
    throw new Conflict('certificate-too-long', 'What this hull is recorded with does not fit on one page.');
  }
}

const assertReleased = async (tx: EntityManager, hullId: string, number: string): Promise<Date> => {
  const rows = await tx.query<{ what: string; at: Date }[]>(
    `select f.what, f.happened_at as at from fact.life_fact f where f.hull_id = $1 and f.what in ('released', 'scrapped') and ${standing('f')}`,
    [hullId],
  );
  const released = rows.find(({ what }) => what === 'released');
  if (!released || rows.some(({ what }) => what === 'scrapped'))
    throw new Conflict('not-released', `Hull ${number} is not released: it has no certificate before that.`);
  return released.at;
};

/** A hold, or what came to light after the release, suspends a new issue; the one that is there stays as it is. */
const assertNothingOpen = async (tx: EntityManager, hullId: string, number: string): Promise<void> => {
  const inTheWay = await obstaclesOf(tx, hullId);
  if (inTheWay.length > 0)
    throw new Conflict(
      'certificate-suspended',
      `No certificate of hull ${number} is issued while ${inTheWay.length} things are open.`,
      undefined,
      { inTheWay },
    );
};

/** Its number stays with a hull; issues are counted. One at a time in a plant: the gate is closed. */
const numberOf = async ({ tx, author }: Fact, hullId: string): Promise<{ number: string; issue: number }> => {
  const [last] = await tx.query<{ number: string; issue: number }[]>(LAST, [hullId]);
  if (last) return { number: last.number, issue: last.issue + 1 };
  const [row] = await tx.query<{ taken: number }[]>(TAKEN, [author.plantId]);
  return { number: `C-${String((row?.taken ?? 0) + 1).padStart(6, '0')}`, issue: 1 };
};
