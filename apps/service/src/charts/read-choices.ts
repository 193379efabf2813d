import type { ChartView } from '@hull-record/contracts';
import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import type { ChartOf } from './chart-of.js';

const MOLDS = `
  select d.code from fact.mold d where d.model_id = $1 and d.part_kind = $2 and ${standing('d')} order by 1`;

const GUNS = `
  select distinct e.code from fact.equipment e join fact.used u on u.gun_id = e.root and ${standing('u')}
  join fact.layer_record r on r.root = u.into_id and ${standing('r')} join fact.part p on p.id = r.part_id
  where p.model_id = $1 and p.kind = $2 and ${standing('e')} order by 1`;

const AREAS = `
  select distinct r.area as code from fact.layer_record r join fact.part p on p.id = r.part_id
  where p.model_id = $1 and p.kind = $2 and r.area is not null and ${standing('r')} order by 1`;

const LAYER = `
  select y.name from fact.schedule s join fact.schedule_layer y on y.schedule_id = s.id
  where s.model_id = $1 and s.part_kind = $2 and y.code = $3 order by s.version desc limit 1`;

/** What a chart can be narrowed to: molds of its parts, guns that sprayed them, areas they were made in. */
export const readChoices = async (
  tx: EntityManager,
  { modelId, partKind, layer }: ChartOf,
): Promise<Pick<ChartView, 'molds' | 'guns' | 'areas' | 'layerName'>> => {
  const codes = async (sql: string): Promise<string[]> =>
    (await tx.query<{ code: string }[]>(sql, [modelId, partKind])).map(({ code }) => code);
  const [named] = layer === null ? [] : await tx.query<{ name: string }[]>(LAYER, [modelId, partKind, layer]);
  return {
    layerName: named?.name ?? null,
    ...{ molds: await codes(MOLDS), guns: await codes(GUNS), areas: await codes(AREAS) },
  };
};
