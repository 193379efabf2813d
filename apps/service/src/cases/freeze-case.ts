import { Injectable } from '@nestjs/common';
import type { FreezeCase as Request } from '@hull-record/contracts';
import { isDefectKind } from '@hull-record/trade';
import { canonical } from '../platform/facts/digest.js';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { sha256 } from '../platform/ids.js';
import { InvalidRequest } from '../platform/refusals.js';
import { assertModels } from './assert-models.js';
import { CaseSettingsEntity } from './case.entity.js';
import { cutOffOf } from './cut-off.js';
import { findCase } from '../platform/cases/find-case.js';
import { settingsOf } from './settings.js';

export interface Frozen {
  readonly version: number;
  readonly sha256: string;
  readonly cutOff: string;
  readonly cutOffBecause: string;
}

/** Freezes how a case is judged. What is frozen stays; another way to judge is frozen as the next version. */
@Injectable()
export class FreezeCase {
  constructor(private readonly record: RecordFact) {}

  run(code: string, request: Request): Promise<Receipt<Frozen>> {
    if (!isDefectKind(request.kind))
      throw new InvalidRequest([
        { pointer: '/kind', detail: `${request.kind} is not a kind of defect: see GET /api/defect-kinds` },
      ]);
    return this.record.run('case settings frozen', { ...request, case: code }, async (fact) => {
      const { id } = await findCase(fact.tx, code, fact.author.personId);
      await assertModels(fact.tx, fact.author.plantId, request.models);
      const settings = settingsOf(request, await cutOffOf(fact, request));
      const hash = sha256(canonical(settings));
      const version = await nextOf(fact, 'case_settings', 'version', id);
      await fact.insert(CaseSettingsEntity, { caseId: id, version, settings, sha256: hash, reason: request.reason });
      const { cutOff, cutOffBecause } = settings;
      return { version, sha256: hash, cutOff, cutOffBecause };
    });
  }
}

/** Versions and looks of a case are counted under a lock of it. */
export const nextOf = async (
  fact: Fact,
  table: 'case_settings' | 'case_look',
  column: 'version' | 'number',
  caseId: string,
): Promise<number> => {
  await fact.tx.query('select pg_advisory_xact_lock(hashtextextended($1, 8))', [`${table}/${caseId}`]);
  const [row] = await fact.tx.query<{ next: number }[]>(
    `select coalesce(max(x.${column}), 0) + 1 as next from fact.${table} x where x.case_id = $1`,
    [caseId],
  );
  return row?.next ?? 1;
};
