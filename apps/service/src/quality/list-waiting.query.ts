import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { WaitingPage, WaitingQuery, WaitingView } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { readTimeCursor, toPage } from '../platform/http/cursor.js';
import { defectMark, repairMark } from '../platform/marks/marks.js';
import { asksOf } from '../platform/release/asks.sql.js';
import { isOpenDefect, isOpenReading } from '../platform/release/open.js';
import { hullOf } from './hull-of.sql.js';

/** A decision is about what stood when it was made: a fact that was corrected since waits again. */
const undecided = (x: string): string => `not exists (
  select from fact.disposition o where o.of_id = ${x}.root and o.recorded_at >= ${x}.recorded_at and ${standing('o')})`;

const layer = (x: string): string => `(select y.code from fact.schedule_layer y where y.id = ${x}.schedule_layer_id)`;

const DEFECTS = `
  select d.root as id, d.root as key, 'defect' as of, 'disposition' as for, d.kind as what, ${defectMark('d')} || ', ' || d.zone as detail,
    d.part_id, ${layer('d')} as layer, null::text as equipment, d.happened_at
  from fact.defect d where ${standing('d')} and ${isOpenDefect('d')} and ${undecided('d')}`;

/** A defect may wait for two things at once: in the list the asking has a place of its own. */
const ASKS = `
  select d.root, md5(d.root::text)::uuid, 'defect', 'answer', d.kind, ${defectMark('d')} || ' asks for: ' || array_to_string(${asksOf('d')}, ', '),
    d.part_id, ${layer('d')}, null, d.happened_at
  from fact.defect d where ${standing('d')} and cardinality(${asksOf('d')}) > 0`;

const READINGS = `
  select g.root, g.root, 'reading', 'disposition', g.what, 'spot ' || g.spot || ': ' || g.value || ' ' || g.unit || ', ' || g.verdict,
    o.part_id, o.layer, (select e.code from fact.equipment e where e.root = g.equipment_id and ${standing('e')}), g.happened_at
  from fact.reading g
  join (select r.root, r.part_id, ${layer('r')} as layer from fact.layer_record r where ${standing('r')}
        union all select root, part_id, null from fact.joint r where ${standing('r')}
        union all select root, part_id, null from fact.repair r where ${standing('r')}
        union all select p.id, p.id, null from fact.part p where ${standing('p')}) o on o.root = g.of_id
  where ${standing('g')} and ${isOpenReading('g')} and ${undecided('g')}`;

const CHECKS = `
  select k.root, k.root, 'equipment check', 'disposition', k.what, e.code || ' was found unfit' || coalesce(': ' || k.value || ' ' || k.unit, ''),
    null, null, e.code, k.happened_at
  from fact.equipment_check k join fact.equipment e on e.root = k.equipment_id and ${standing('e')}
  where ${standing('k')} and not k.good and ${undecided('k')}`;

const REPAIRS = `
  select r.root, r.root, 'repair', 'acceptance', ${repairMark('r')}, r.procedure, r.part_id, null, null, r.happened_at
  from fact.repair r where ${standing('r')}
    and not exists (select from fact.acceptance a where a.repair_id = r.id and ${standing('a')})`;

const LIST = `
  select w.id, w.key, w.of, w.for, w.what, w.detail, p.number as part, ${hullOf('w.part_id')} as hull, w.layer, w.equipment,
    w.happened_at as "happenedAt"
  from (${[DEFECTS, ASKS, READINGS, CHECKS, REPAIRS].join(' union all ')}) w
  left join fact.part p on p.id = w.part_id
  where ($1::text is null or w.for = $1) and ($2::timestamptz is null or (w.happened_at, w.key) > ($2, $3::uuid))
  order by w.happened_at, w.key limit $4`;

/** What waits for the word of somebody, the oldest first. */
@Injectable()
export class ListWaiting {
  constructor(private readonly db: DataSource) {}

  async run({ for: wanted, cursor, limit }: WaitingQuery): Promise<WaitingPage> {
    const { at, id } = readTimeCursor(cursor);
    type Row = Omit<WaitingView, 'happenedAt'> & { happenedAt: Date; key: string };
    const rows = await this.db.query<Row[]>(LIST, [wanted ?? null, at, id, limit + 1]);
    const { items, next } = toPage(rows, limit, ({ happenedAt, key }) => [happenedAt.toISOString(), key]);
    return { items: items.map(({ key: _, ...row }) => ({ ...row, happenedAt: row.happenedAt.toISOString() })), next };
  }
}
