import { Injectable } from '@nestjs/common';
import type { SetGun as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { splitAgain } from '../platform/lots/split-again.js';
import { findGun } from './find-gun.js';
import { GunSettingEntity } from './gun-setting.entity.js';

/** Records how much catalyst a gun was set to add, from then on: also late, when what was sprayed since is split anew. */
@Injectable()
export class SetGun {
  constructor(private readonly record: RecordFact) {}

  run(gun: string, request: Request): Promise<Receipt<{ catalystPercent: number }>> {
    const decide = async (fact: Fact): Promise<{ catalystPercent: number }> => {
      const gunId = await findGun(fact, gun);
      const { catalystPercent } = request;
      await fact.insert(GunSettingEntity, { gunId, catalystPercent });
      await splitAgain(fact, gunId, `The gun was set to ${catalystPercent} % catalyst, which was recorded after this.`);
      return { catalystPercent };
    };
    // What was sprayed since is split anew, so nobody may draw meanwhile.
    return this.record.run('gun set', { ...request, gun }, decide, { genealogy: 'alone' });
  }
}
