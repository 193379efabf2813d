import type { CertificateContent, ChangedValue, Envelope } from '@hull-record/contracts';
import { Injectable, Logger } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { now } from '../../platform/clock.js';
import { reachOfCorrections } from '../../platform/composition/reach-of-corrections.js';
import { readAsOne } from '../../platform/database/read-as-one.js';
import type { Author } from '../../platform/facts/fact.js';
import { RecordFact } from '../../platform/facts/record-fact.js';
import { childId } from '../../platform/ids.js';
import { AFTER_CORRECTION } from '../../platform/recompute/after-correction.js';
import { Jobs } from '../../platform/recompute/jobs.js';
import { CertificateWithdrawnEntity } from './certificate.entities.js';
import { drawAgain } from './draw-again.js';
import { HULLS_OF_ENTRY } from './hulls-of-entry.sql.js';
import { changedValues } from './printed-values.js';

const ENTRY = `
  select j.plant_id as "plantId", j.person_id as "personId", j.device_id as "deviceId", 'stated' as identity,
    p.badge, d.code as device, j.recorded_at as "recordedAt", (j.entry::jsonb -> 'body' ->> 'reason') as reason,
    array(select v from fact.correction c, unnest(array[c.corrects, c.replacement]) v
      where c.entry_id = j.id and v is not null) as versions
  from fact.journal j join fact.person p on p.id = j.person_id join fact.device d on d.id = j.device_id where j.id = $1`;

const WITHDRAWN = 'select from fact.certificate_withdrawn where certificate_id = $1';

interface Entry extends Author {
  readonly device: string;
  readonly recordedAt: Date;
  readonly reason: string | null;
  readonly versions: readonly string[];
}

interface Issued {
  readonly id: string;
  readonly hullId: string;
  readonly content: string;
}

/**
 * Withdraws certificates after a correction: those of which a printed value is not on record any more. No person has to
 * see it; it is recorded in the name of who corrected. What is drawn comes from facts alone, so that nothing has to be
 * recomputed first. It may be ended anywhere: done again, it finds what is left.
 */
@Injectable()
export class WithdrawAfterCorrection {
  private readonly log = new Logger('certificates');

  constructor(
    jobs: Jobs,
    private readonly db: DataSource,
    private readonly record: RecordFact,
  ) {
    jobs.of(AFTER_CORRECTION, ({ entry }) => this.run(String(entry)));
  }

  /** @param entryId of the journal: a correction, or a HIN that was changed */
  async run(entryId: string): Promise<void> {
    const [entry] = await this.db.query<Entry[]>(ENTRY, [entryId]);
    if (!entry) return;
    const { places } = await reachOfCorrections(this.db.manager, entry.versions);
    const all = await this.db.query<Issued[]>(HULLS_OF_ENTRY, [entry.versions, places, entryId]);
    for (const issued of all) {
      if ((await this.db.query<unknown[]>(WITHDRAWN, [issued.id])).length > 0) continue;
      const changed = await this.changed(issued, entry);
      if (changed.length > 0) await this.withdraw(issued, entryId, entry, changed);
    }
  }

  /** Draws the hull as it was on record right before the entry and right after it, and, if they differ, now. */
  private changed({ hullId, content }: Issued, { recordedAt }: Entry): Promise<readonly ChangedValue[]> {
    const issued = JSON.parse(content) as CertificateContent;
    const at = recordedAt.toISOString();
    const earlier = new Date(recordedAt.getTime() - 1).toISOString();
    return readAsOne(this.db, async (tx) => {
      const before = await drawAgain(tx, hullId, issued, earlier);
      const after = await drawAgain(tx, hullId, issued, at);
      const nothing = { ...issued, ...NOTHING };
      const is = await drawAgain(tx, hullId, issued);
      return changedValues({ issued, before: before ?? nothing, after: after ?? nothing, now: is ?? nothing });
    });
  }

  private async withdraw({ id }: Issued, entryId: string, entry: Entry, changed: readonly ChangedValue[]) {
    const reason = `A correction changed what it prints${entry.reason === null ? '.' : `: ${entry.reason}`}`;
    const body: Envelope & object = {
      ...{ id: childId(id, `withdrawn/${entryId}`), enteredBy: entry.badge, device: entry.device },
      ...{ happenedAt: now().toISOString(), certificate: id, becauseOf: entryId, reason },
    };
    const row = { certificateId: id, reason, becauseOf: entryId, changed };
    try {
      await this.record.run(
        'certificate withdrawn',
        body,
        async (fact) => {
          await fact.insert(CertificateWithdrawnEntity, row);
          return { withdrawn: true as const, changed };
        },
        { author: entry },
      );
    } catch (error) {
      // Another correction, a person, or this job before it was ended, was first.
      if ((await this.db.query<unknown[]>(WITHDRAWN, [id])).length > 0) return;
      throw error;
    }
    this.log.log(`A certificate was withdrawn: a correction changed ${changed.length} of the values it prints.`);
  }
}

/** What a hull that is not released any more says. */
const NOTHING = {
  ...{ hull: '', hin: null, model: '', released: '' },
  ...{ parts: [], repaired: [], concessions: [], leftOut: [] },
};
