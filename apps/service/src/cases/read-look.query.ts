import { Injectable } from '@nestjs/common';
import type { FrozenSettings, LookAgain, LookView } from '@hull-record/contracts';
import { DataSource, type EntityManager } from 'typeorm';
import { personNow } from '../platform/access/call.js';
import { readAsOne } from '../platform/database/read-as-one.js';
import { canonical } from '../platform/facts/digest.js';
import { sha256 } from '../platform/ids.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { Conflict, NotThere } from '../platform/refusals.js';
import { answerApart } from './answer/answer-apart.js';
import { findCase } from '../platform/cases/find-case.js';
import { FROZEN, LOOK_COLUMNS } from './read-cases.query.js';
import type { CaseSettings } from './settings.js';

const READ = `
  select ${LOOK_COLUMNS}, a.inputs_sha256 as "inputsSha256", a.answer_sha256 as "answerSha256", a.answer,
    (select to_json(f) from (select ${FROZEN}) f) as frozen
  from fact.case_look k join fact.case_settings s on s.id = k.settings_id left join fact.case_answer a on a.look_id = k.id
  where k.case_id = $1 and k.number::text = $2`;

type Row = Omit<LookView, 'case'>;

/** One look at a case, and whether it comes out again. */
@Injectable()
export class ReadLook {
  constructor(
    private readonly db: DataSource,
    private readonly store: PhotoStore,
  ) {}

  /** @throws NotThere */
  run(code: string, look: string): Promise<LookView> {
    return readAsOne(this.db, async (tx) => ({ case: code, ...(await rowOf(tx, code, look)) }));
  }

  /** @throws NotThere, Conflict while it is not done */
  async again(code: string, look: string): Promise<LookAgain> {
    const { frozen, inputsSha256, answerSha256 } = await rowOf(this.db.manager, code, look);
    if (inputsSha256 === null || answerSha256 === null)
      throw new Conflict('not-done', 'This look is not worked out yet: ask again when it is.');
    const kept = await this.store.read(inputsSha256);
    if (!kept) throw new NotThere('readable inputs of look', look);
    const settings = frozen.settings as unknown as CaseSettings;
    const again = sha256(canonical(await answerApart({ settings, inputs: kept.toString('utf8') })));
    const whole = sha256(canonical(settings)) === frozen.sha256;
    const same = again === answerSha256 && whole;
    return {
      ...{ same, method: settings.method, inputsSha256, answerSha256: again },
      says: same
        ? 'The same settings and inputs give the same answer, to the digit.'
        : 'The answer does not come out again: the settings, the inputs or the method are not what they were.',
    };
  }
}

const rowOf = async (tx: EntityManager, code: string, look: string): Promise<Row> => {
  const { id } = await findCase(tx, code, personNow().personId);
  const [row] = await tx.query<(Row & { readonly frozen: FrozenSettings })[]>(READ, [id, look]);
  if (!row) throw new NotThere('look', look);
  return row;
};
