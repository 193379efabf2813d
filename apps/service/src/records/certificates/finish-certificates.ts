import { type CertificateContent, type Envelope } from '@hull-record/contracts';
import { bundleText, inclusionProof, inclusionReads, makeBundle } from '@hull-record/evidence';
import { Injectable, Logger, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import { setTimeout as pause } from 'node:timers/promises';
import { DataSource } from 'typeorm';
import { now } from '../../platform/clock.js';
import type { Author } from '../../platform/facts/fact.js';
import { RecordFact } from '../../platform/facts/record-fact.js';
import { childId } from '../../platform/ids.js';
import { readSubtrees } from '../../platform/journal/read-subtrees.js';
import { SealJournal } from '../../platform/journal/seal-journal.js';
import { SignHead } from '../../platform/journal/sign-head.js';
import { PhotoStore } from '../../platform/photos/photo-store.js';
import { CertificateCodeEntity, CertificateFileEntity } from './certificate.entities.js';
import { CertificatePage, draw } from './draw.js';
import { signPdf } from './sign-pdf.js';
import { SigningKey } from './signing-key.js';

/** How long until what could not be sealed yet is tried again, ms. */
const AGAIN_MS = 500;
/** How long who issues one waits for its file, ms: an entry is sealed when all that began before it has ended. */
const PATIENCE_MS = 20_000;

const UNFINISHED = `
  select c.id, c.entry_id as "entryId", c.content, k.code, s.index::text as index, j.entry, j.plant_id as "plantId",
    j.person_id as "personId", j.device_id as "deviceId", 'stated' as identity, p.badge, d.code as device
  from fact.certificate c
  join work.certificate_code k on k.certificate_id = c.id
  join fact.journal j on j.id = c.entry_id
  join fact.person p on p.id = j.person_id join fact.device d on d.id = j.device_id
  left join fact.sealed_entry s on s.entry_id = c.entry_id
  where not exists (select from fact.certificate_file f where f.certificate_id = c.id) order by c.recorded_at`;

interface Unfinished extends Author {
  readonly id: string;
  readonly entryId: string;
  readonly content: string;
  readonly code: string;
  readonly index: string | null;
  readonly entry: string;
  readonly device: string;
}

/** Makes the files of certificates that were issued: once what they say is sealed, and a head over it is signed. */
@Injectable()
export class FinishCertificates implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly log = new Logger('certificates');
  private readonly stop = new AbortController();
  private working: Promise<void> | null = null;
  private asked = false;

  constructor(
    private readonly db: DataSource,
    private readonly record: RecordFact,
    private readonly seal: SealJournal,
    private readonly head: SignHead,
    private readonly signing: SigningKey,
    private readonly page: CertificatePage,
    private readonly store: PhotoStore,
  ) {}

  /** Goes on with what an earlier process did not finish. */
  onApplicationBootstrap(): void {
    void this.soon();
  }

  async onModuleDestroy(): Promise<void> {
    this.stop.abort();
    await this.working;
  }

  /** Begins to make what is not made, and does not wait for it. */
  soon(): Promise<void> {
    this.asked = true;
    this.working ??= this.work().finally(() => (this.working = null));
    return this.working;
  }

  /** Makes what is not made; what takes long is made after it. */
  async orLater(): Promise<void> {
    await Promise.race([this.soon(), pause(PATIENCE_MS, undefined, { signal: this.stop.signal, ref: false })]).catch(
      () => undefined,
    );
  }

  private async work(): Promise<void> {
    while (!this.stop.signal.aborted && this.asked) {
      this.asked = false;
      try {
        if ((await this.round()) > 0) this.asked = true;
      } catch (error) {
        this.asked = true;
        this.log.error(`A certificate could not be made and is tried again: ${String(error)}`);
      }
      if (this.asked) await pause(AGAIN_MS, undefined, { signal: this.stop.signal }).catch(() => undefined);
    }
  }

  /** Makes what can be made; how many wait to be sealed. */
  private async round(): Promise<number> {
    await this.seal.all();
    const all = await this.db.query<Unfinished[]>(UNFINISHED);
    for (const one of all) if (one.index !== null) await this.make(one, Number(one.index));
    return all.filter(({ index }) => index === null).length;
  }

  private async make(of: Unfinished, index: number): Promise<void> {
    const content = JSON.parse(of.content) as CertificateContent;
    const created = now();
    const proof = await this.prove(of, index);
    const pdf = await draw(content, this.page, of.code, proof, created);
    const signed = await signPdf(pdf, await this.signing.load(content.plant), content.plant, created);
    const sha256 = await this.store.keep(signed);
    const { badge, device } = of;
    const file = { certificate: of.id, sha256, bytes: signed.length };
    const body: Envelope & typeof file = {
      ...{ id: childId(of.id, 'file'), enteredBy: badge, device, happenedAt: created.toISOString() },
      ...file,
    };
    await this.record.run(
      'certificate filed',
      body,
      async (fact) => {
        await fact.insert(CertificateFileEntity, { certificateId: of.id, sha256, bytes: signed.length });
        await fact.tx.delete(CertificateCodeEntity, { certificateId: of.id });
        return { sha256 };
      },
      { author: of },
    );
  }

  /** The journal entry with its proof, under a head signed now. */
  private async prove({ plantId, entry }: Unfinished, index: number): Promise<Buffer> {
    const head = await this.head.of(plantId);
    if (head === null) throw new Error('There is no head over what is sealed.');
    const read = await readSubtrees(this.db.manager, plantId, inclusionReads(index, head.size));
    const proof = inclusionProof(index, head.size, read);
    return Buffer.from(bundleText(makeBundle({ content: JSON.parse(entry) as unknown, index, proof, head })));
  }
}
