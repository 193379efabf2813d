import { Injectable } from '@nestjs/common';
import { MAP_AT_MOST, type DefectMap, type MapFilter, type MapPointView } from '@hull-record/contracts';
import { DataSource, type EntityManager } from 'typeorm';
import { readAsOne } from '../platform/database/read-as-one.js';
import { askMap } from './ask-map.js';
import { ACROSS, ALONG, FOUND_DEFECTS, PARTS } from './found-defects.sql.js';

const POINTS = `
  select d.root as id, p.number as part, d.kind, d.place ->> 'surface' as surface, ${ALONG} as along, ${ACROSS} as across
  ${FOUND_DEFECTS} order by d.happened_at desc, d.root desc limit ${MAP_AT_MOST}`;

const KINDS = `
  select d.kind, count(*)::int as found ${FOUND_DEFECTS} group by d.kind order by found desc, d.kind`;

const COUNTED = `
  select (select count(*)::int ${PARTS}) as parts, (select count(distinct d.part_id)::int ${FOUND_DEFECTS}) as "partsWith"`;

/** Where on the skin of a model defects were found, over all its hulls. */
@Injectable()
export class ReadDefectMap {
  constructor(private readonly db: DataSource) {}

  run(model: string, filter: MapFilter): Promise<DefectMap> {
    return readAsOne(this.db, (tx) => this.read(tx, model, filter));
  }

  private async read(tx: EntityManager, model: string, filter: MapFilter): Promise<DefectMap> {
    const { parameters, recomputing } = await askMap(tx, model, filter);
    const kinds = await tx.query<DefectMap['kinds']>(KINDS, [...parameters]);
    const [counted] = await tx.query<[Pick<DefectMap, 'parts' | 'partsWith'>]>(COUNTED, [...parameters]);
    const points = await tx.query<MapPointView[]>(POINTS, [...parameters]);
    const found = kinds.reduce((sum, each) => sum + each.found, 0);
    return { model, partKind: filter.partKind, ...counted, found, points, kinds, recomputing };
  }
}
