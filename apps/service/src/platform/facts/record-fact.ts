import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import type { Envelope } from '@hull-record/contracts';
import { Composition } from '../composition/composition.js';
import { meetGenealogy, type GenealogyLock } from '../composition/meet-genealogy.js';
import { prepared } from '../database/prepared.js';
import { ClientIdReused, InvalidRequest } from '../refusals.js';
import { askAfterCorrection } from '../recompute/after-correction.js';
import { findAuthor } from './author.js';
import { canonical, digestOf } from './digest.js';
import { type Author, Fact } from './fact.js';
import { JournalEntity } from './journal.entity.js';
import { assertNotAhead } from './not-ahead.js';
import { markUnproved } from './unproved.js';
import { markHulls } from '../roll/mark-hulls.js';
import { meetGate, type Gate } from './gate.js';
import { judgeMade } from '../rules/judge-made.js';
import { judgeAgain } from '../used/judge-again.js';
import { assertSameTexts, type Paths, textsIn, withoutTexts } from '../texts/apart.js';
import { unkeptText } from './unkept-text.js';

/** What a recorded fact answers with, now and at every retry. */
export interface Receipt<R> {
  readonly id: string;
  readonly recordedAt: string;
  readonly replayed: boolean;
  readonly result: R;
}

export interface RecordOptions<B> {
  /** What the journal keeps of the request, when it must not keep all (personal data). */
  readonly journalled?: (body: B) => unknown;
  /** Fields whose texts lie apart (`keepText`), so that the journal says only that there was one. */
  readonly freeTexts?: Paths;
  /** Closed while a release looks at all that could stand in its way; open for everything else. */
  readonly gate?: Gate;
  /** Alone when it rewrites who was made of what, so that nobody reads the genealogy or adds to it meanwhile. */
  readonly genealogy?: GenealogyLock;
  /** Names the author when nobody is registered yet. */
  readonly author?: Author;
}

/** Format of journal entries; raised when their content changes shape. */
const ENTRY_FORMAT = 1;

/**
 * The one path that records a fact: its rows, what follows from them, and its journal entry, in one transaction.
 *
 * The same client-made id again records nothing and gives the same receipt; with another body it is refused.
 * Ten at once: one records, the others wait for it and get its receipt.
 */
@Injectable()
export class RecordFact {
  constructor(
    private readonly db: DataSource,
    private readonly composition: Composition,
  ) {}

  async run<B extends Envelope, R>(
    kind: string,
    given: B,
    decide: (fact: Fact) => Promise<R>,
    options: RecordOptions<B> = {},
  ): Promise<Receipt<R>> {
    // An id is a number however it is written; the database gives it back in small letters.
    const body = { ...given, id: given.id.toLowerCase() };
    assertNotAhead(body.happenedAt, '/happenedAt');
    assertNotAhead(body.enteredAt, '/enteredAt');
    assertKept(body);
    const freeTexts = options.freeTexts ?? [];
    const journalled = withoutTexts(options.journalled?.(body) ?? body, freeTexts);
    const work = async (tx: EntityManager): Promise<Receipt<R>> => {
      const before = await claim(tx, body.id, digestOf({ kind, body: journalled }));
      if (before) {
        await assertSameTexts(tx, body.id, textsIn(body, freeTexts));
        return before as Receipt<R>;
      }
      const author = options.author ?? (await findAuthor(tx, body));
      await meetGate(tx, author.plantId, options.gate ?? 'open');
      await meetGenealogy(tx, author.plantId, options.genealogy ?? 'one of many');
      const fact = new Fact(tx, body.id, author, new Date(body.happenedAt), await databaseTime(tx));
      const result = await decide(fact);
      const remade = await this.composition.follow(fact, options.genealogy ?? 'one of many');
      await judgeMade(fact);
      await judgeAgain(fact, remade);
      await markUnproved(fact);
      await markHulls(fact);
      await askAfterCorrection(fact);
      await writeEntry(fact, kind, body, journalled, result);
      return { id: fact.id, recordedAt: fact.recordedAt.toISOString(), replayed: false, result };
    };
    return this.db.transaction((tx) => (options.genealogy === 'alone' ? work(tx) : prepared(tx, () => work(tx))));
  }
}

const assertKept = (body: Envelope): void => {
  const unkept = unkeptText(body);
  if (unkept.length > 0) throw new InvalidRequest(unkept);
};

/** Takes the client id for this transaction, or gives the receipt of the fact that took it before. */
const claim = async (tx: EntityManager, id: string, digest: Buffer): Promise<Receipt<unknown> | undefined> => {
  const taken: unknown[] = await tx.query(
    'insert into fact.client_id (id, digest) values ($1, $2) on conflict do nothing returning id',
    [id, digest],
  );
  if (taken.length === 1) return undefined;
  const [before] = await tx.query<{ digest: Buffer; recorded_at: Date; entry: string }[]>(
    'select k.digest, j.recorded_at, j.entry from fact.client_id k join fact.journal j on j.id = k.id where k.id = $1',
    [id],
  );
  if (!before || !before.digest.equals(digest)) throw new ClientIdReused(id);
  const { result } = JSON.parse(before.entry) as { result: unknown };
  return { id, recordedAt: before.recorded_at.toISOString(), replayed: true, result };
};

/** The database's clock, so that services on several machines agree. */
const databaseTime = async (tx: EntityManager): Promise<Date> => {
  const [row] = await tx.query<{ at: Date }[]>("select date_trunc('milliseconds', clock_timestamp()) as at");
  return (row as { at: Date }).at;
};

const writeEntry = async (
  fact: Fact,
  kind: string,
  body: Envelope,
  journalled: unknown,
  result: unknown,
): Promise<void> => {
  const { plantId, personId, deviceId } = fact.author;
  const header = {
    id: fact.id,
    plantId,
    kind,
    personId,
    deviceId,
    identity: fact.author.identity,
    happenedAt: fact.happenedAt,
    recordedAt: fact.recordedAt,
  };
  const rows = fact.rows.map(({ table, id, digest }) => ({ table, id, sha256: digest }));
  const entry = canonical({ format: ENTRY_FORMAT, ...header, station: body.station, body: journalled, rows, result });
  const covers = fact.rows.map((row) => `${row.table}/${row.id}`);
  await fact.tx.insert(JournalEntity, { ...header, format: ENTRY_FORMAT, covers, entry });
};
