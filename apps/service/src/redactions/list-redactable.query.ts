import { Injectable } from '@nestjs/common';
import type { Redactable } from '@hull-record/contracts';
import { DataSource, type EntityManager } from 'typeorm';
import { now } from '../platform/clock.js';
import { readAsOne } from '../platform/database/read-as-one.js';
import { keepsData } from '../platform/life/keeps-data.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { isCommitment } from '../platform/texts/free-texts.js';
import { textOf } from '../platform/texts/text-of.sql.js';
import { KINDS, PHOTOS } from './kinds.js';

const redacted = (table: string, of: string): string => `(
  select json_build_object('at', r.happened_at, 'by', w.badge, 'reason', r.reason, 'original', r.original)
  from fact.${table} r join fact.journal e on e.id = r.entry_id join fact.person w on w.id = e.person_id
  where ${of} order by r.recorded_at desc, r.id desc limit 1)`;

const TEXTS = Object.entries(KINDS)
  .map(([kind, { table, field, hull, mark }]) => {
    const said = redacted('text_redacted', `r.of_root = x.root and r.field = '${field}'`);
    return `select '${kind}' as kind, x.root as of, ${mark} as mark, ${textOf('x', field)} as text,
      case when ${said} is not null then (select k.value from work.free_text k where k.commitment = x.${field}) end as original,
      to_json(x.happened_at) as at, x.happened_at, ${isCommitment(`x.${field}`)} as erasable, ${said} as redacted
    from fact.${table} x where x.${field} is not null and ${hull} = $1
      and not exists (select from fact.${table} later where later.root = x.root and later.recorded_at > x.recorded_at)`;
  })
  .join(' union all ');

const SHOTS = PHOTOS.map(
  ({ table, hull, mark }) => `select x.root as id, ${mark} as mark, x.width, x.height, to_json(x.happened_at) as at,
    x.happened_at, ${redacted('photo_redacted', 'r.photo_id = x.root')} as redacted
  from fact.${table} x where ${hull} = $1`,
).join(' union all ');

/** Freely written texts and photos of a hull, the newest first; what was withdrawn is kept all the same, and listed. */
@Injectable()
export class ListRedactable {
  constructor(private readonly db: DataSource) {}

  run(number: string): Promise<Redactable> {
    return readAsOne(this.db, (tx) => list(tx, number));
  }
}

const list = async (tx: EntityManager, number: string): Promise<Redactable> => {
  const hullId = await findHull(tx, number);
  const { until, because } = await keepsData(tx, hullId, now().toISOString().slice(0, 10));
  const newestFirst = 'order by happened_at desc, mark';
  const texts = await tx.query<(Redactable['texts'][number] & { happened_at: Date })[]>(
    `select * from (${TEXTS}) t ${newestFirst}`,
    [hullId],
  );
  const photos = await tx.query<(Redactable['photos'][number] & { happened_at: Date })[]>(
    `select * from (${SHOTS}) t ${newestFirst}`,
    [hullId],
  );
  return {
    ...{ keptUntil: until, keptBecause: because },
    texts: texts.map(({ happened_at: _at, ...text }) => text),
    photos: photos.map(({ happened_at: _at, ...photo }) => photo),
  };
};
