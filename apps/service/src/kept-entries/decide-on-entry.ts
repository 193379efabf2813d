import type { RequestListener } from 'node:http';
import { Injectable } from '@nestjs/common';
import { HttpAdapterHost } from '@nestjs/core';
import type { DecideOnEntry as Request } from '@hull-record/contracts';
import { DataSource, type EntityManager } from 'typeorm';
import { ADMISSION, Admissions } from '../platform/access/admissions.js';
import type { SendingDevice } from '../platform/access/call.js';
import { QUEUED } from '../platform/access/read-caller.js';
import { fewAtOnce } from '../platform/few-at-once.js';
import { findAuthor } from '../platform/facts/author.js';
import { assertNotAhead } from '../platform/facts/not-ahead.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { uuidOrNull } from '../platform/lookups/uuid-or-null.js';
import { Conflict, NotThere, Unprocessable } from '../platform/refusals.js';
import { askSelf } from './ask-self.js';
import { EntryDecisionEntity } from './entry-decision.entity.js';

interface Kept extends SendingDevice {
  readonly id: string;
  readonly path: string;
  readonly media: string;
  readonly body: Buffer;
  readonly decided: boolean;
}

export interface Decided {
  readonly admitted: boolean;
  readonly answer: unknown;
}

const KEPT = `
  select k.id, k.path, k.media, k.body, 'device' as via, d.plant_id as "plantId", d.root as "deviceId", d.code as device,
    exists (select from fact.entry_decision e where e.kept_entry_id = k.id and e.entry_id <> $2 and ${standing('e')}) as decided
  from work.kept_entry k join fact.device d on d.root = k.device_id and ${standing('d')}
  where k.id = ${uuidOrNull('$1')}`;

/**
 * Decides about an entry that a revoked device sent. One that is admitted is recorded as it was made, by whom it names
 * and judged by what that person was allowed then; sent again it is recorded once.
 */
@Injectable()
export class DecideOnEntry {
  constructor(
    private readonly db: DataSource,
    private readonly record: RecordFact,
    private readonly http: HttpAdapterHost,
    private readonly admissions: Admissions,
  ) {}

  /** One decision at a time about an entry: the others wait, and find it decided. */
  private readonly inTurn = fewAtOnce(2);

  /** @throws NotThere, Conflict when it was decided, Unprocessable when the service refuses the entry itself */
  run(entry: string, request: Request): Promise<Receipt<Decided>> {
    const alone = (tx: EntityManager) =>
      tx.query('select pg_advisory_xact_lock(hashtextextended($1, 10))', [entry.toLowerCase()]);
    return this.inTurn(() => this.db.transaction(async (tx) => alone(tx).then(() => this.decide(entry, request))));
  }

  private async decide(entry: string, request: Request): Promise<Receipt<Decided>> {
    const [kept] = await this.db.query<Kept[]>(KEPT, [entry, request.id]);
    if (!kept) throw new NotThere('kept entry', entry);
    if (kept.decided) throw new Conflict('entry-decided', 'Somebody has decided about this entry before.');
    // Who may not decide, or says when it was wrongly, has nothing sent.
    assertNotAhead(request.happenedAt, '/happenedAt');
    await findAuthor(this.db.manager, request);
    const answer = request.admitted ? await this.send(kept) : null;
    const { admitted, reason } = request;
    return this.record.run('kept entry decided', { ...request, entry: kept.id }, async (fact) => {
      await fact.insert(EntryDecisionEntity, { keptEntryId: kept.id, admitted, reason, answer });
      return { admitted, answer };
    });
  }

  /** Sends the entry again, in the name of its device. */
  private async send({ path, media, body, via, plantId, deviceId, device }: Kept): Promise<unknown> {
    const ticket = this.admissions.issue({ via, plantId, deviceId, device });
    const headers = { 'content-type': media, [QUEUED]: '1', [ADMISSION]: ticket };
    const { status, said } = await askSelf(this.http.httpAdapter.getInstance() as RequestListener, path, headers, body);
    if (status >= 300)
      throw new Unprocessable('entry-refused', 'The entry itself is refused; its problem is in `entry`.', '/admitted', {
        entry: said,
      });
    // A receipt says at a retry that it is one: what is kept of it is what it says at first.
    return { ...(said as object), replayed: false };
  }
}
