import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { PageQuery, SuspectPage, Suspect } from '@hull-record/contracts';
import { isSuspect } from '../platform/equipment/suspect.sql.js';
import { standing } from '../platform/facts/standing.js';
import { readTimeCursor, toPage } from '../platform/http/cursor.js';
import { standingPlaces } from '../platform/places/places.js';
import { NotThere } from '../platform/refusals.js';

const PLACED = (of: string): string => `
  join lateral (${standingPlaces(`p.root = ${of}`)}) place on true
  join fact.part part on part.id = place.part_id
  left join fact.joint j on j.part_id = part.id and ${standing('j')}
  left join fact.hull_number n on n.hull_id = j.hull_id and n.kind = 'hull number'`;

const DONE_WITH = `
  select g.root as id, 'reading' as kind, g.what || ', spot ' || g.spot || ': ' || g.value || ' ' || g.unit as what,
    part.number as part, n.as_printed as hull, g.happened_at
  from fact.reading g ${PLACED('g.of_id')} where g.equipment_id = $1 and ${standing('g')}
  union all
  select u.root, 'used', u.quantity || ' ' || u.unit || ' of lot ' || l.code, part.number, n.as_printed, u.happened_at
  from fact.used u join fact.lot l on l.root = u.lot_id and ${standing('l')} ${PLACED('u.into_id')}
  where u.gun_id = $1 and ${standing('u')}`;

const LIST = `
  select d.id, d.kind, d.what, d.part, d.hull, d.happened_at as "happenedAt" from (${DONE_WITH}) d
  where ${isSuspect('$1::uuid', 'd.happened_at')}
    and ($2::timestamptz is null or (d.happened_at, d.id) < ($2, $3::uuid))
  order by d.happened_at desc, d.id desc limit $4`;

/** Every reading taken and everything sprayed with a piece of equipment while it may have been unfit, the newest first. */
@Injectable()
export class ListSuspects {
  constructor(private readonly db: DataSource) {}

  async run(code: string, query: PageQuery): Promise<SuspectPage> {
    const [found] = await this.db.query<{ root: string }[]>(
      `select e.root from fact.equipment e where e.code = $1 and ${standing('e')}`,
      [code],
    );
    if (!found) throw new NotThere('equipment', code);
    const { at, id } = readTimeCursor(query.cursor);
    const rows = await this.db.query<(Omit<Suspect, 'happenedAt'> & { happenedAt: Date })[]>(LIST, [
      found.root,
      at,
      id,
      query.limit + 1,
    ]);
    const told = rows.map((row) => ({ ...row, happenedAt: row.happenedAt.toISOString() }));
    return toPage(told, query.limit, (row) => [row.happenedAt, row.id]);
  }
}
