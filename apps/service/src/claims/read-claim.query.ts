import { Injectable } from '@nestjs/common';
import type { ClaimView } from '@hull-record/contracts';
import { blisterHint } from '@hull-record/trade';
import { DataSource, type EntityManager } from 'typeorm';
import { foundBy, foundByReason } from '../platform/claims/claim.sql.js';
import { readAsOne } from '../platform/database/read-as-one.js';
import { standing } from '../platform/facts/standing.js';
import { defectMark } from '../platform/marks/marks.js';
import { redactedOn } from '../platform/photos/shown-of.sql.js';
import { termOfHull } from '../platform/warranty/term-of-hull.js';
import { textOf } from '../platform/texts/text-of.sql.js';
import { CLAIM_COLUMNS } from './claim-columns.js';
import { findClaim } from './find-claim.js';
import { photosAsked } from './photos-asked.js';

const BY = (entry: string): string =>
  `(select w.badge from fact.journal e join fact.person w on w.root = e.person_id where e.id = ${entry} limit 1)`;

const READ = `
  select ${CLAIM_COLUMNS}, ${textOf('c', 'symptoms')} as symptoms, c.grade, c.looks, ${foundBy('c')} as "foundBy",
    ${foundByReason('c')} as "foundByReason",
    c.hours_ashore as "hoursAshore", c.moisture, c.says, ${BY('c.entry_id')} as by, c.happened_at as "happenedAt",
    coalesce((select json_agg(json_build_object('id', d.root, 'mark', ${defectMark('d')}, 'part', p.number, 'place', d.place,
        'zone', d.zone, 'lengthMm', d.length_mm) order by p.number, d.number)
      from fact.defect d join fact.part p on p.id = d.part_id where d.claim_id = c.root and ${standing('d')}), '[]') as defects,
    coalesce((select json_agg(json_build_object('id', f.id, 'shows', f.shows, 'originalSha256', f.original_sha256, 'redactedOn', ${redactedOn('f')}) order by f.recorded_at, f.id)
      from fact.claim_photo f where f.claim_id = c.root and ${standing('f')}), '[]') as photos,
    coalesce((select json_agg(json_build_object('id', d.id, 'decision', d.decision, 'reason', ${textOf('d', 'reason')}, 'paidPercent', d.paid_percent,
        'hours', d.hours, 'cost', case when d.cost_amount is null then null else json_build_object('amount', d.cost_amount, 'currency', d.cost_currency) end,
        'term', d.term, 'by', ${BY('d.entry_id')}, 'happenedAt', d.happened_at) order by d.happened_at desc, d.recorded_at desc, d.id)
      from fact.claim_decision d where d.claim_id = c.root and ${standing('d')}), '[]') as decisions
  from fact.claim c where c.id = $1`;

type Row = Omit<ClaimView, 'defects' | 'hint' | 'photosAsked' | 'term'> & {
  readonly defects: readonly (ClaimView['defects'][number] & { readonly lengthMm: number | null })[];
};

/** One claim with what it became, its pictures, what the terms say now, and what was decided. */
@Injectable()
export class ReadClaim {
  constructor(private readonly db: DataSource) {}

  run(claim: string): Promise<ClaimView> {
    return readAsOne(this.db, (tx) => read(tx, claim));
  }
}

const read = async (tx: EntityManager, claim: string): Promise<ClaimView> => {
  const { root, hullId, kind, reportedOn } = await findClaim(tx, claim);
  const [row] = (await tx.query<Row[]>(READ, [root])) as [Row];
  return {
    ...row,
    hint: hintOf(row),
    defects: row.defects.map(({ lengthMm: _size, ...defect }) => defect),
    photosAsked: [...photosAsked(row.photos.map(({ shows }) => shows))],
    term: await termOfHull(tx, hullId, { kind, reportedOn }),
  };
};

/** By the largest blister that was measured. */
const hintOf = ({ kind, looks, defects }: Row): string | null => {
  const sizes = defects.flatMap(({ lengthMm }) => (lengthMm === null ? [] : [lengthMm]));
  if (kind !== 'blister' || sizes.length === 0) return null;
  return `${blisterHint(Math.max(...sizes), looks ?? 'irregular')}: a hint by size and looks, no finding`;
};
