import { Injectable, StreamableFile } from '@nestjs/common';
import type { OwnerFile } from '@hull-record/contracts';
import { answerBy } from '@hull-record/trade';
import { DataSource, type EntityManager } from 'typeorm';
import { claimMark } from '../platform/claims/claim.sql.js';
import { now } from '../platform/clock.js';
import { readAsOne } from '../platform/database/read-as-one.js';
import { standing } from '../platform/facts/standing.js';
import { csvAnswer } from '../platform/http/csv.js';
import { textOf } from '../platform/texts/text-of.sql.js';
import { lineOf, OWNER, type OwnerRow } from './all-owners.query.js';
import { findOwner } from './find-owner.js';
import { keepsData } from '../platform/life/keeps-data.js';

const CHANGES = `select c.what, c.erased, c.happened_at as at, c.reason from fact.owner_changed c
  where c.owner_id = $1 order by c.recorded_at, c.id`;
const REQUESTS = `select q.asked, q.asked_on::text as "askedOn" from fact.owner_request q
  where q.owner_id = $1 order by q.asked_on, q.recorded_at, q.id`;
/** Claims of the hull from when this owner had it until the next one did. */
const CLAIMS = `
  select ${claimMark('c')} as mark, c.kind, c.reported_on::text as "reportedOn", ${textOf('c', 'symptoms')} as symptoms
  from fact.claim c join fact.owner o on o.root = $1 and o.id = o.root
  where c.hull_id = o.hull_id and ${standing('c')} and c.reported_on >= o.happened_at::date
    and c.reported_on < coalesce((select min(n.happened_at)::date from fact.owner n
      where n.hull_id = o.hull_id and n.happened_at > o.happened_at and ${standing('n')}), 'infinity')
  order by c.number`;
const NOTICES = `
  select n.code as notice, m.class, m.happened_at as "mailedAt",
    exists (select from fact.mailing_returned r where r.mailing_id = m.root and ${standing('r')}) as returned
  from fact.notice_mailing m join fact.notice n on n.root = m.notice_id and ${standing('n')}
  where m.owner_id = $1 and ${standing('m')} order by m.happened_at, m.id`;

/** What an erasure does not reach. */
const STAYS = [
  'That the hull had an owner, and since when: without who it was.',
  'Freely written texts of claims, defects and the life of the boat, and photos: each is redacted by itself, on the page of the hull, under the same rule.',
  'Texts recorded before they lay apart, reasons of other decisions, and notes of the shop: they stand in the sealed journal and cannot be taken out; the first are shown in another wording.',
  'That there was a photo, and the SHA-256 of its file: who has the very same file can tell that it was here.',
  'Backups that were made before: they are kept apart, and run out as the plant set it. Whoever restores one erases again.',
  'The log by which the database repairs itself, and its freed pages, for a short while: until they are written over.',
];

/** All that is on record of one person: on the screen, and as files that are given to the person. */
@Injectable()
export class ReadOwner {
  constructor(private readonly db: DataSource) {}

  run(owner: string): Promise<OwnerFile> {
    return readAsOne(this.db, (tx) => load(tx, owner));
  }

  async json(owner: string): Promise<StreamableFile> {
    const content = Buffer.from(`${JSON.stringify(await this.run(owner), null, 2)}\n`, 'utf8');
    return new StreamableFile(content, { type: 'application/json', disposition: 'attachment; filename="owner.json"' });
  }

  async csv(owner: string): Promise<StreamableFile> {
    return csvAnswer('owner', 'data', ['what', 'value'], leaves('', await this.run(owner)));
  }
}

const load = async (tx: EntityManager, owner: string): Promise<OwnerFile> => {
  const { root, hullId } = await findOwner(tx, owner);
  const [row] = await tx.query<OwnerRow[]>(`${OWNER} and o.root = $1`, [root]);
  if (!row) throw new Error('An owner that was found has no row.');
  const { because, holds } = await keepsData(tx, hullId, now().toISOString().slice(0, 10));
  const changes = await tx.query<(Omit<OwnerFile['changes'][number], 'at'> & { at: Date })[]>(CHANGES, [root]);
  const requests = await tx.query<Omit<OwnerFile['requests'][number], 'answerBy'>[]>(REQUESTS, [root]);
  const notices = await tx.query<(Omit<OwnerFile['notices'][number], 'mailedAt'> & { mailedAt: Date })[]>(NOTICES, [
    root,
  ]);
  return {
    ...(await lineOf(tx, row)),
    ...{ detail: row.detail, model: row.model, keptBecause: because, stays: STAYS },
    changes: changes.map((change) => ({ ...change, at: change.at.toISOString() })),
    requests: requests.map((request) => ({ ...request, answerBy: answerBy(request.askedOn) })),
    claims: await tx.query(CLAIMS, [root]),
    notices: notices.map((notice) => ({ ...notice, mailedAt: notice.mailedAt.toISOString() })),
    holds: holds.map((hold) => ({ ...hold, since: hold.since.toISOString() })),
  };
};

/** A nested value as lines of a table: where it stands, and what it is. */
const leaves = (where: string, value: unknown): readonly (readonly [string, string])[] => {
  if (value === null || value === undefined) return [];
  if (typeof value !== 'object') return [[where, String(value)]];
  return Object.entries(value).flatMap(([key, inner]) => leaves(where === '' ? key : `${where}.${key}`, inner));
};
