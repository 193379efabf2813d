import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { z } from 'zod';
import type { ModelView, MoldView } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';

const LAYERS = `
  select json_agg(json_strip_nulls(json_build_object('code', y.code, 'name', y.name, 'zone', y.zone, 'plies', y.plies,
    'materials', y.materials, 'readings', y.readings, 'climate', y.climate, 'layUpWindow', y.lay_up_window,
    'predecessors', y.predecessors, 'holdPoint', y.hold_point)) order by y.position)
  from fact.schedule_layer y where y.schedule_id = s.id`;

const MODELS = `
  select m.root as id, m.code, m.name, m.skins, m.required_parts as "requiredParts",
    coalesce((select json_agg(json_build_object('id', s.id, 'model', m.code, 'partKind', s.part_kind, 'version', s.version, 'process', coalesce(s.process, 'hand lay-up'),
        'layers', (${LAYERS})) order by s.part_kind, s.version)
      from fact.schedule s where s.model_id = m.root and ${standing('s')}), '[]') as schedules
  from fact.model m where ${standing('m')} order by m.code`;

/** Models with their published schedules, and molds with how many parts were pulled from each. */
@Injectable()
export class ListModels {
  constructor(private readonly db: DataSource) {}

  models(): Promise<z.output<typeof ModelView>[]> {
    return this.db.query(MODELS);
  }

  molds(): Promise<z.output<typeof MoldView>[]> {
    return this.db.query(`
      select d.root as id, d.code, m.code as model, d.part_kind as "partKind",
        (select count(*)::int from fact.part p where p.mold_id = d.root and ${standing('p')}) as pulls
      from fact.mold d join fact.model m on m.id = d.model_id where ${standing('d')} order by d.code`);
  }
}
