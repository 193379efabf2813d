import { Injectable } from '@nestjs/common';
import type { OwnClaim } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { claimMark } from '../platform/claims/claim.sql.js';
import { standing } from '../platform/facts/standing.js';
import { findOwnHull } from '../platform/life/find-own-hull.js';
import { textOf } from '../platform/texts/text-of.sql.js';
import { photosAsked } from './photos-asked.js';

const LIST = `
  select c.root as id, ${claimMark('c')} as mark, c.kind, c.reference, c.reported_on::text as "reportedOn", ${textOf('c', 'symptoms')} as symptoms, c.grade, c.says,
    array(select f.shows from fact.claim_photo f where f.claim_id = c.root and ${standing('f')} order by f.recorded_at, f.id) as photos,
    (select json_build_object('decision', d.decision, 'paidPercent', d.paid_percent, 'decidedAt', d.happened_at)
     from fact.claim_decision d where d.claim_id = c.root and ${standing('d')}
     order by d.happened_at desc, d.recorded_at desc, d.id limit 1) as decision
  from fact.claim c where c.hull_id = $1 and c.dealer_id = $2 and ${standing('c')} order by c.number desc`;

/** The claims of a hull that are of the dealer who asks, and not of one who had it before; without what is thought of them at the desk. */
@Injectable()
export class OwnClaims {
  constructor(private readonly db: DataSource) {}

  /** @throws NotThere */
  async run(number: string): Promise<OwnClaim[]> {
    const { hullId, dealerId } = await findOwnHull(this.db.manager, number);
    const rows = await this.db.query<Omit<OwnClaim, 'photosAsked'>[]>(LIST, [hullId, dealerId]);
    return rows.map((row) => ({ ...row, photosAsked: [...photosAsked(row.photos)] }));
  }
}
