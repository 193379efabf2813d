import { Injectable } from '@nestjs/common';
import type { MappedDefectsPage, MappedDefectsQuery } from '@hull-record/contracts';
import { DataSource, type EntityManager } from 'typeorm';
import { readAsOne } from '../platform/database/read-as-one.js';
import { standing } from '../platform/facts/standing.js';
import { readTimeCursor, toPage } from '../platform/http/cursor.js';
import { loadDefects } from '../platform/views/faults.js';
import { NOW } from '../platform/views/making.js';
import { toDefectView } from '../platform/views/to-view.js';
import { loadVerdicts } from '../platform/views/verdicts.js';
import { askMap } from './ask-map.js';
import { FOUND_DEFECTS } from './found-defects.sql.js';

const LIST = `
  select d.root as id, d.happened_at as at, p.mold,
    (select n.as_printed from fact.joint j join fact.hull_number n on n.hull_id = j.hull_id and n.kind = 'hull number'
      where j.part_id = d.part_id and ${standing('j')}) as hull
  ${FOUND_DEFECTS} and ($14::timestamptz is null or (d.happened_at, d.root) < ($14, $15::uuid))
  order by d.happened_at desc, d.root desc limit $16`;

interface Row {
  readonly id: string;
  readonly at: Date;
  readonly mold: string;
  readonly hull: string | null;
}

/** The defects on a map as a list, the newest first. */
@Injectable()
export class ListMappedDefects {
  constructor(private readonly db: DataSource) {}

  run(model: string, query: MappedDefectsQuery): Promise<MappedDefectsPage> {
    return readAsOne(this.db, (tx) => this.read(tx, model, query));
  }

  private async read(tx: EntityManager, model: string, query: MappedDefectsQuery): Promise<MappedDefectsPage> {
    const after = readTimeCursor(query.cursor);
    const { parameters, recomputing } = await askMap(tx, model, query);
    const rows = await tx.query<Row[]>(LIST, [...parameters, after.at, after.id, query.limit + 1]);
    const { items, next } = toPage(rows, query.limit, ({ at, id }) => [at.toISOString(), id]);
    const roots = items.map(({ id }) => id);
    const verdicts = await loadVerdicts(tx, roots, NOW);
    const known = new Map((await loadDefects(tx, { roots }, NOW)).map((row) => [row.id, toDefectView(row, verdicts)]));
    return {
      items: items.flatMap(({ id, hull, mold }) => {
        const defect = known.get(id);
        return defect === undefined ? [] : [{ ...defect, hull, mold }];
      }),
      next,
      recomputing,
    };
  }
}
