import { Injectable } from '@nestjs/common';
import type { HookUpGun as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { findLots } from '../platform/lots/find-lots.js';
import { followDraws } from '../platform/lots/follow-draws.js';
import { NotThere } from '../platform/refusals.js';
import { findGun } from './find-gun.js';
import { HookUpEntity } from './hook-up.entity.js';

/**
 * Records what was hooked up to a feed of a gun, or that it was unhooked. It feeds the gun until the next hook-up; what
 * was sprayed meanwhile, and recorded before this, is corrected.
 */
@Injectable()
export class HookUpGun {
  constructor(private readonly record: RecordFact) {}

  run(gun: string, request: Request): Promise<Receipt<{ feed: string; to: string | null }>> {
    const decide = async (fact: Fact): Promise<{ feed: string; to: string | null }> => {
      const gunId = await findGun(fact, gun);
      const { feed, lot, tank } = request;
      const lotId = lot === undefined ? null : await findLot(fact, lot);
      const tankId = tank === undefined ? null : await findByCode(fact.tx, 'tank', fact.author.plantId, tank, '/tank');
      await fact.insert(HookUpEntity, { gunId, feed, lotId, tankId });
      await followDraws(fact, 'gun_id', gunId, `What was hooked up to gun ${gun} was recorded after this.`);
      return { feed, to: lot ?? tank ?? null };
    };
    return this.record.run('gun hooked up', { ...request, gun }, decide, { genealogy: 'alone' });
  }
}

const findLot = async (fact: Fact, lot: string): Promise<string> => {
  const found = (await findLots(fact.tx, fact.author.plantId, [lot], fact.happenedAt)).get(lot);
  if (!found) throw new NotThere('lot', lot, '/lot');
  return found.id;
};
