import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { z } from 'zod';
import type { ModelView, MoldView, ScheduleLayer } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { careOverdue } from '../platform/molds/mold.sql.js';
import { demandOf } from '../platform/layers/demand.js';
import { scheduleLayerJson } from '../platform/layers/schedule-layer.sql.js';

const LAYERS = `
  select json_agg(${scheduleLayerJson('y')} order by y.position)
  from fact.schedule_layer y where y.schedule_id = s.id`;

const MODELS = `
  select m.root as id, m.code, m.name, m.skins, m.required_parts as "requiredParts",
    coalesce((select json_agg(json_build_object('id', s.id, 'model', m.code, 'partKind', s.part_kind, 'version', s.version, 'process', coalesce(s.process, 'hand lay-up'),
        'layers', (${LAYERS})) order by s.part_kind, s.version)
      from fact.schedule s where s.model_id = m.root and ${standing('s')}), '[]') as schedules
  from fact.model m where ${standing('m')} order by m.code`;

type View = z.output<typeof ModelView>;
type Schedule = View['schedules'][number];
type Row = Omit<View, 'schedules'> & {
  readonly schedules: readonly (Omit<Schedule, 'layers'> & {
    readonly layers: readonly (ScheduleLayer & { id: string })[];
  })[];
};

/** Models with their published schedules, and molds with how many parts were pulled from each. */
@Injectable()
export class ListModels {
  constructor(private readonly db: DataSource) {}

  async models(): Promise<View[]> {
    const models = await this.db.query<Row[]>(MODELS);
    return models.map(({ schedules, ...model }) => ({
      ...model,
      schedules: schedules.map(({ layers, ...schedule }) => ({
        ...schedule,
        layers: layers.map(({ id: _id, ...layer }) => ({ ...layer, demand: demandOf(layer) })),
      })),
    }));
  }

  molds(): Promise<z.output<typeof MoldView>[]> {
    return this.db.query(`
      select d.root as id, d.code, m.code as model, d.part_kind as "partKind",
        (select count(*)::int from fact.part p where p.mold_id = d.root and ${standing('p')}) as pulls,
        ${careOverdue('d.root', 'now()')} as overdue
      from fact.mold d join fact.model m on m.id = d.model_id where ${standing('d')} order by d.code`);
  }
}
