import { Injectable } from '@nestjs/common';
import type { LookAtCase as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { NotThere, Unprocessable } from '../platform/refusals.js';
import { CaseLookEntity } from './case.entity.js';
import { findCase } from '../platform/cases/find-case.js';
import { nextOf } from './freeze-case.js';
import { askForLook } from './look-job.js';

/** Asks for a look at a case: it is counted, and a job works it out. */
@Injectable()
export class LookAtCase {
  constructor(private readonly record: RecordFact) {}

  run(code: string, request: Request): Promise<Receipt<{ look: number; version: number }>> {
    return this.record.run('case looked at', { ...request, case: code }, async (fact) => {
      const { id } = await findCase(fact.tx, code, fact.author.personId);
      const settings = await settingsAsked(fact, id, request.version);
      const number = await nextOf(fact, 'case_look', 'number', id);
      const lookId = await fact.insert(CaseLookEntity, { caseId: id, settingsId: settings.id, number });
      await askForLook(fact, lookId);
      return { look: number, version: settings.version };
    });
  }
}

const settingsAsked = async (
  fact: Fact,
  caseId: string,
  version: number | undefined,
): Promise<{ readonly id: string; readonly version: number }> => {
  const [found] = await fact.tx.query<{ id: string; version: number }[]>(
    `select s.id, s.version from fact.case_settings s
     where s.case_id = $1 and ($2::int is null or s.version = $2) and ${standing('s')} order by s.version desc limit 1`,
    [caseId, version ?? null],
  );
  if (found) return found;
  if (version !== undefined) throw new NotThere('version of the settings', String(version), '/version');
  throw new Unprocessable('nothing-frozen', 'Freeze how the case is judged before looking at it.', '/version');
};
