import { Injectable } from '@nestjs/common';
import type { CaseGroups, ReadGroupsQuery } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { personNow } from '../platform/access/call.js';
import { findCase } from '../platform/cases/find-case.js';
import { readAsOne } from '../platform/database/read-as-one.js';
import { dayOfLife } from '../platform/roll/read-roll.js';
import { InvalidRequest } from '../platform/refusals.js';
import { assertModels } from './assert-models.js';
import { groupsOf, SMALL_GROUP } from './inputs/groups-of.js';
import { loadHulls } from './inputs/load-hulls.js';

/** How large the groups are within which a case would compare hulls: what each choice costs, before one is frozen. */
@Injectable()
export class CompareGroups {
  constructor(private readonly db: DataSource) {}

  /** @throws NotThere InvalidRequest */
  run(code: string, asked: ReadGroupsQuery): Promise<CaseGroups> {
    const models = (asked.models ?? '').split(',').flatMap((model) => model.trim() || []);
    const [builtFrom, builtTo] = [asked.builtFrom ?? null, asked.builtTo ?? null];
    if (builtFrom !== null && builtTo !== null && builtFrom > builtTo)
      throw new InvalidRequest([{ pointer: '/builtTo', detail: 'must not be before builtFrom' }]);
    return readAsOne(this.db, async (tx) => {
      const { id } = await findCase(tx, code, personNow().personId);
      const [{ plant }] = await tx.query<[{ plant: string }]>(
        'select plant_id as plant from fact.case_file where root = $1 limit 1',
        [id],
      );
      await assertModels(tx, plant, models);
      const { hulls } = await loadHulls(tx, plant, { kind: '', models, builtFrom, builtTo });
      const atRisk = [...hulls].filter((hull) => dayOfLife(hull, asked.origin) !== null);
      return { hulls: atRisk.length, smallBelow: SMALL_GROUP, choices: groupsOf(atRisk) };
    });
  }
}
