import { Injectable } from '@nestjs/common';
import type { Envelope } from '@hull-record/contracts';
import { DataSource, type EntityManager } from 'typeorm';
import { readAsOne } from '../platform/database/read-as-one.js';
import { renewExposure } from '../platform/exposure/renew-exposure.js';
import { renewRoll } from '../platform/roll/renew-roll.js';
import { canonical } from '../platform/facts/digest.js';
import type { Author } from '../platform/facts/fact.js';
import { RecordFact } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { childId, sha256 } from '../platform/ids.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { answerApart } from './answer/answer-apart.js';
import { CaseAnswerEntity } from './case.entity.js';
import type { CaseInputs } from './inputs/case-inputs.js';
import { inputsText } from './inputs/inputs-text.js';
import { judgeHulls, type Frozen } from './inputs/judge-hulls.js';
import { loadHulls } from './inputs/load-hulls.js';
import { loadLots } from './inputs/load-lots.js';
import { loadOthers } from './inputs/load-others.js';
import { loadSpots, loadWarrantyCap } from './inputs/load-spots.js';
import { Room } from './inputs/room.js';
import { STEPS } from './look-job.js';
import { leastShareOf, type CaseSettings } from './settings.js';

const ASKED = `
  select k.id, s.settings, s.recorded_at as "frozenAt",
    to_char(s.recorded_at at time zone p.time_zone, 'YYYY-MM-DD') as "frozenOn",
    to_char(k.recorded_at at time zone p.time_zone, 'YYYY-MM-DD') as "lookedOn", j.person_id as "personId", j.device_id as "deviceId", j.plant_id as "plantId",
    'stated' as identity, '{}'::text[] as roles, d.code as device, coalesce(w.badge, '') as badge,
    to_char(date_trunc('milliseconds', clock_timestamp()) at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') as now
  from fact.case_look k join fact.case_settings s on s.id = k.settings_id join fact.journal j on j.id = k.entry_id
  join fact.plant p on p.id = s.plant_id
  join fact.device d on d.root = j.device_id and ${standing('d')}
  left join fact.person w on w.root = j.person_id and ${standing('w')}
  where k.id = $1 and not exists (select from fact.case_answer a where a.look_id = k.id)`;

interface Asked extends Author, Frozen {
  readonly id: string;
  readonly settings: CaseSettings;
  readonly device: string;
  readonly now: string;
}

/** What the journal keeps of an answer: hashes, from which it can be told whether it is the same. */
interface Answered extends Envelope {
  readonly look: string;
  readonly inputsSha256: string;
  readonly answerSha256: string;
}

/** Works out a look: reads its inputs as of one instant, keeps them under their hash, and records what was found. */
@Injectable()
export class RunLook {
  constructor(
    private readonly db: DataSource,
    private readonly record: RecordFact,
    private readonly store: PhotoStore,
  ) {}

  async run(lookId: string): Promise<void> {
    const [asked] = await this.db.query<Asked[]>(ASKED, [lookId]);
    if (!asked) return;
    const tell = (done: number): Promise<void> => this.tell(lookId, done);
    await tell(0);
    await renewRoll(this.db);
    await renewExposure(this.db);
    const text = await this.inputs(asked);
    const inputsSha256 = await this.store.keep(Buffer.from(text, 'utf8'));
    const answer = await answerApart({ settings: asked.settings, inputs: text }, tell);
    const answerSha256 = sha256(canonical(answer));
    const { badge, device, now } = asked;
    const of = { look: lookId, inputsSha256, answerSha256 };
    const body: Answered = { id: childId(lookId, 'answered'), enteredBy: badge, device, happenedAt: now, ...of };
    await this.record.run(
      'look answered',
      body,
      async (fact) => {
        const { verdict, exploratory } = answer;
        await fact.insert(CaseAnswerEntity, { lookId, inputsSha256, answerSha256, verdict, exploratory, answer });
        await fact.tx.query("update work.case_run set state = 'done', step = null, done = total where look_id = $1", [
          lookId,
        ]);
        return { verdict, exploratory };
      },
      { author: asked },
    );
  }

  /** The text of the inputs as of one instant. */
  private async inputs(asked: Asked): Promise<string> {
    const room = new Room();
    try {
      return await inputsText(await readAsOne(this.db, (tx) => inputsOf(tx, asked, room)));
    } finally {
      room.leave();
    }
  }

  private async tell(lookId: string, done: number): Promise<void> {
    await this.db.query(
      "update work.case_run set state = 'running', step = $2, done = $3, trouble = null where look_id = $1",
      [lookId, STEPS[done], done],
    );
  }
}

const inputsOf = async (tx: EntityManager, asked: Asked, room: Room): Promise<CaseInputs> => {
  const { plantId, settings } = asked;
  const judged = judgeHulls(await loadHulls(tx, plantId, settings), settings, asked);
  const { ids, hulls, leftOut, watchedUntil, exploratory } = judged;
  return {
    ...{ watchedUntil, exploratory, hulls, leftOut },
    lots: await loadLots(tx, judged, leastShareOf(settings), { room }),
    others: await loadOthers(tx, judged),
    ...(await loadSpots(tx, ids, settings.kind, judged)),
    warrantyCapDays: await loadWarrantyCap(tx, plantId, settings, judged.origins),
  };
};
