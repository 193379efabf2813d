import { Injectable } from '@nestjs/common';
import type { ClaimListItem, ClaimPage, ListClaimsQuery } from '@hull-record/contracts';
import { normaliseNumber } from '@hull-record/trade';
import { DataSource } from 'typeorm';
import { isPrompted, lastDecision } from '../platform/claims/claim.sql.js';
import { standing } from '../platform/facts/standing.js';
import { readCursor, toPage } from '../platform/http/cursor.js';
import { CLAIM_COLUMNS } from './claim-columns.js';

const LIST = `
  select ${CLAIM_COLUMNS} from fact.claim c
  where ${standing('c')} and ($1::text is null or (c.reported_on, c.id) < ($1::date, $2::uuid))
    and ($4::text is null or c.hull_id in (select n.hull_id from fact.hull_number n where n.normalised = $4))
    and ($5::text is null or c.kind = $5)
    and ($6::text is null or c.dealer_id = (select d.root from fact.dealer d where d.code = $6 and ${standing('d')}))
    and ($7::boolean is null or $7 = (coalesce(${lastDecision('c')}, 'more is asked') = 'more is asked'))
    and ($8::boolean is null or $8 = ${isPrompted('c')})
  order by c.reported_on desc, c.id desc limit $3`;

/** Claims, those reported last first. */
@Injectable()
export class ListClaims {
  constructor(private readonly db: DataSource) {}

  async run({ limit, cursor, hull, kind, dealer, undecided, prompted }: ListClaimsQuery): Promise<ClaimPage> {
    const [on, id] = readCursor(cursor, 2);
    const number = hull === undefined ? null : normaliseNumber(hull);
    const narrowed = [kind ?? null, dealer ?? null, undecided ?? null, prompted ?? null];
    const asked = [on, id, limit + 1, number, ...narrowed];
    const rows = await this.db.query<ClaimListItem[]>(LIST, asked);
    return toPage(rows, limit, (claim) => [claim.reportedOn, claim.id]);
  }
}
