import { Injectable } from '@nestjs/common';
import { Amendments } from '../platform/facts/amendments.js';
import { insertVersion, readVersion } from '../platform/facts/new-version.js';
import { assertNotAhead } from '../platform/facts/not-ahead.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { findLots } from '../platform/lots/find-lots.js';
import { NotThere } from '../platform/refusals.js';
import { HookUpEntity } from './hook-up.entity.js';

/** Sets anew when a gun was hooked up, or to what. */
@Injectable()
export class AmendHookUp {
  constructor(amendments: Amendments) {
    amendments.of('hook-up', async (fact, oldId, newId, set) => {
      assertNotAhead(set.happenedAt, '/set/happenedAt');
      await readVersion(fact, HookUpEntity, oldId);
      const { plantId } = fact.author;
      const lot =
        set.lot === undefined ? undefined : (await findLots(fact.tx, plantId, [set.lot], fact.happenedAt)).get(set.lot);
      if (set.lot !== undefined && !lot) throw new NotThere('lot', set.lot, '/set/lot');
      const tank =
        set.tank === undefined ? undefined : await findByCode(fact.tx, 'tank', plantId, set.tank, '/set/tank');
      const hooked = lot || tank ? { lotId: lot?.id ?? null, tankId: tank ?? null } : {};
      const happenedAt = set.happenedAt === undefined ? undefined : new Date(set.happenedAt);
      await insertVersion(fact, HookUpEntity, oldId, newId, { ...hooked, happenedAt });
    });
  }
}
