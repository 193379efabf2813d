import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Envelope } from '@hull-record/contracts';
import { reachOfCorrections } from '../composition/reach-of-corrections.js';
import type { Author } from '../facts/fact.js';
import { openNewlyBroken } from '../facts/open-newly-broken.js';
import { RecordFact } from '../facts/record-fact.js';
import { standing } from '../facts/standing.js';
import { childId } from '../ids.js';
import { drawsOf } from '../used/draws.sql.js';
import { judgeDraws, type JudgedDraw } from '../used/judge-draws.js';

/** So many draws are judged in one look. */
const JUDGED_AT_ONCE = 500;

const WORKED_OUT = `
  select r.id, r.tank_lots as "tankLots", r.places, j.person_id as "personId", j.device_id as "deviceId", j.plant_id as "plantId", 'stated' as identity,
    d.code as device, coalesce(p.badge, '') as badge,
    to_char(date_trunc('milliseconds', clock_timestamp()) at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') as now
  from work.recomputation r
  join fact.journal j on j.id = r.id
  join fact.device d on d.root = j.device_id and ${standing('d')}
  left join fact.person p on p.root = j.person_id and ${standing('p')}
  where r.plant_id = $1 and r.finished_at is null
    and not exists (select from work.stale_lot s where s.recomputation_id = r.id and not s.done)
    and not exists (select from work.stale_place s where s.recomputation_id = r.id and not s.done)
  order by r.asked_at, r.id limit 1`;

interface WorkedOut extends Author {
  readonly id: string;
  readonly tankLots: number;
  readonly places: number;
  readonly device: string;
  readonly now: string;
}

/** What the journal keeps of a recomputation. */
interface Summary extends Envelope {
  readonly recomputation: string;
  readonly tankLots: number;
  readonly places: number;
}

/** Ends what is worked out: judges what came to light, and keeps one summary in the journal. */
@Injectable()
export class FinishRecomputation {
  constructor(
    private readonly db: DataSource,
    private readonly record: RecordFact,
  ) {}

  /** Finishes the oldest recomputation that is worked out; false when there is none. */
  async oldestOf(plantId: string): Promise<boolean> {
    const [done] = await this.db.query<WorkedOut[]>(WORKED_OUT, [plantId]);
    if (!done) return false;
    const judged = await this.judge(done);
    const { id, tankLots, places, badge, device, now } = done;
    const of = { recomputation: id, tankLots, places };
    const body: Summary = { id: childId(id, 'recomputed'), enteredBy: badge, device, happenedAt: now, ...of };
    await this.record.run(
      'recomputed',
      body,
      async (fact) => {
        await openNewlyBroken(fact, judged);
        const opened = fact.nonconformities.length;
        await fact.tx.query(
          'update work.recomputation set finished_at = $2, nonconformities = $3, trouble = null where id = $1',
          [id, fact.recordedAt, opened],
        );
        await fact.tx.query('delete from work.stale_lot where recomputation_id = $1', [id]);
        await fact.tx.query('delete from work.stale_place where recomputation_id = $1', [id]);
        return { ...of, nonconformities: opened };
      },
      { author: done },
    );
    return true;
  }

  /** Judges what was drawn of all that the correction reached, as it is made of now. */
  private async judge({ id, plantId }: WorkedOut): Promise<readonly JudgedDraw[]> {
    const rows = await this.db.query<{ corrects: string; replacement: string | null }[]>(
      'select corrects, replacement from fact.correction where entry_id = $1',
      [id],
    );
    const ids = rows.flatMap(({ corrects, replacement }) =>
      replacement === null ? [corrects] : [corrects, replacement],
    );
    const { lots } = await reachOfCorrections(this.db.manager, ids);
    const draws = await drawsOf(this.db.manager, { lots, versions: ids });
    const judged: JudgedDraw[] = [];
    for (let i = 0; i < draws.length; i += JUDGED_AT_ONCE)
      judged.push(...(await judgeDraws(this.db.manager, plantId, draws.slice(i, i + JUDGED_AT_ONCE))));
    return judged;
  }
}
