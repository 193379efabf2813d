import { Injectable } from '@nestjs/common';
import type { SetGun as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findGun } from './find-gun.js';
import { GunSettingEntity } from './gun-setting.entity.js';

/** Records how much catalyst a gun was set to add, from then on. */
@Injectable()
export class SetGun {
  constructor(private readonly record: RecordFact) {}

  run(gun: string, request: Request): Promise<Receipt<{ catalystPercent: number }>> {
    return this.record.run('gun set', { ...request, gun }, async (fact) => {
      const gunId = await findGun(fact, gun);
      const { catalystPercent } = request;
      await fact.insert(GunSettingEntity, { gunId, catalystPercent });
      return { catalystPercent };
    });
  }
}
