import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { readAsOne } from '../platform/database/read-as-one.js';
import type { HullView, Obstacle } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { layersOf, scheduleOf } from '../platform/layers/layers-of-part.sql.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { obstaclesOf } from '../platform/release/obstacles.js';
import { keptUntil } from '../platform/life/keep-until.js';
import { textOf } from '../platform/texts/text-of.sql.js';
import { HULL_COLUMNS, HULL_TABLES } from './hull-columns.js';

const READ = `
  select ${HULL_COLUMNS},
    (select json_agg(json_build_object('kind', n.kind, 'number', n.as_printed, 'happenedAt', n.happened_at, 'reason', n.reason, 'authority', n.authority) order by n.recorded_at, n.id)
      from fact.hull_number n where n.hull_id = h.id) as numbers,
    (select json_agg(json_build_object('id', f.id, 'what', f.what, 'dealer', d.name, 'note', ${textOf('f', 'note')}, 'happenedAt', f.happened_at,
        'recordedAt', f.recorded_at, 'by', p.badge) order by f.happened_at, f.recorded_at, f.id)
      from fact.life_fact f join fact.journal e on e.id = f.entry_id join fact.person p on p.id = e.person_id
      left join fact.dealer d on d.id = f.dealer_id where f.hull_id = h.id and ${standing('f')}) as life,
    (select json_agg(json_build_object('number', p.number, 'kind', p.kind, 'mold', o.code, 'scheduleVersion', s.version,
        'joinedAt', j.happened_at, 'joint', j.root,
        'layersMade', (select count(*)::int from fact.layer_record r where r.part_id = p.id and ${standing('r')}),
        'layersScheduled', (select count(*)::int from ${layersOf('p')} y)) order by j.happened_at, p.number)
      from fact.joint j join fact.part p on p.id = j.part_id join fact.mold o on o.id = p.mold_id
      join fact.schedule s on s.id = ${scheduleOf('p')} where j.hull_id = h.id and ${standing('j')}) as parts,
    (select max(f.happened_at) from fact.life_fact f where f.hull_id = h.id and f.what = 'released' and ${standing('f')}) as "releasedAt"
  from ${HULL_TABLES} where h.id = $1`;

type Row = Omit<HullView, 'release' | 'keepUntil'> & { readonly releasedAt: string | null };

/** One hull, with its life, its parts and all that stands in the way of its release. */
@Injectable()
export class ReadHull {
  constructor(private readonly db: DataSource) {}

  run(number: string): Promise<HullView> {
    return readAsOne(this.db, (tx) => this.read(tx, number));
  }

  private async read(tx: EntityManager, number: string): Promise<HullView> {
    const id = await findHull(tx, number);
    const [row] = await tx.query<[Row]>(READ, [id]);
    const inTheWay: readonly Obstacle[] = await obstaclesOf(tx, id);
    const { releasedAt, ...hull } = row;
    return {
      ...hull,
      parts: hull.parts ?? [],
      keepUntil: await keptUntil(tx, id),
      release: { releasedAt, questioned: releasedAt !== null && inTheWay.length > 0, inTheWay: [...inTheWay] },
    };
  }
}
