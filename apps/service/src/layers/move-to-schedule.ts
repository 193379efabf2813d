import { Injectable } from '@nestjs/common';
import type { MoveToSchedule as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { Conflict, NotThere, Unprocessable } from '../platform/refusals.js';
import { PartScheduleEntity } from './part-schedule.entity.js';

interface Found {
  readonly id: string;
  readonly old_position: number | null;
  readonly new_position: number | null;
}

const FIND = `
  select s.root as id,
    (select y.position from fact.schedule_layer y where y.schedule_id = p.schedule_id and y.code = $3) as old_position,
    (select y.position from fact.schedule_layer y where y.schedule_id = s.root and y.code = $3) as new_position
  from fact.part p
  join fact.model m on m.plant_id = p.plant_id and m.code = coalesce($4, (select own.code from fact.model own where own.id = p.model_id))
  join fact.schedule s on s.model_id = m.root and s.part_kind = p.kind and s.version = $2 and ${standing('s')}
  where p.id = $1`;

/** Moves a part to another version, or to another model's schedule, from a named layer on, which is not made yet. */
@Injectable()
export class MoveToSchedule {
  constructor(private readonly record: RecordFact) {}

  run(part: string, request: Request): Promise<Receipt<{ version: number; fromLayer: string }>> {
    return this.record.run('part moved to a schedule', { ...request, part }, async (fact) => {
      const partId = await findByCode(fact.tx, 'part', fact.author.plantId, part);
      const { version, fromLayer, model, reason } = request;
      const [found] = await fact.tx.query<Found[]>(FIND, [partId, version, fromLayer, model ?? null]);
      if (!found) throw new NotThere('schedule version', String(version), '/version');
      await assertFrom(fact, partId, found, fromLayer);
      const turn = await nextTurn(fact, partId);
      await fact.insert(PartScheduleEntity, { partId, scheduleId: found.id, fromLayer, turn, reason });
      return { version, fromLayer };
    });
  }
}

const assertFrom = async (fact: Fact, partId: string, found: Found, fromLayer: string): Promise<void> => {
  if (found.old_position === null || found.new_position === null)
    throw new Unprocessable(
      'layer-not-in-both',
      `Layer ${fromLayer} is not in both versions: name one that is.`,
      '/fromLayer',
    );
  const [made] = await fact.tx.query<{ code: string }[]>(
    `select y.code from fact.layer_record r join fact.schedule_layer y on y.id = r.schedule_layer_id
     where r.part_id = $1 and y.position >= $2 and ${standing('r')} order by y.position limit 1`,
    [partId, found.old_position],
  );
  if (made)
    throw new Conflict(
      'layer-made-already',
      `Layer ${made.code} is made already: name the first layer that is not.`,
      '/fromLayer',
    );
};

/** One more than the moves that no longer stand: the unique key refuses a second that would stand. */
const nextTurn = async (fact: Fact, partId: string): Promise<number> => {
  const [row] = await fact.tx.query<[{ turn: number }]>(
    `select count(*)::int + 1 as turn from fact.part_schedule m where m.part_id = $1 and not (${standing('m')})`,
    [partId],
  );
  return row.turn;
};
