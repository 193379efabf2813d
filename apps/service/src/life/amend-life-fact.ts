import { Injectable } from '@nestjs/common';
import { keepNewText } from '../platform/texts/keep-new-text.js';
import { Amendments } from '../platform/facts/amendments.js';
import { insertVersion } from '../platform/facts/new-version.js';
import { assertNotAhead } from '../platform/facts/not-ahead.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { LifeFactEntity } from '../platform/life/life-fact.entity.js';

/** Sets anew when something happened in the life of a boat, or to which dealer. */
@Injectable()
export class AmendLifeFact {
  constructor(amendments: Amendments) {
    amendments.of('life fact', async (fact, oldId, newId, set) => {
      assertNotAhead(set.happenedAt, '/set/happenedAt');
      await insertVersion(fact, LifeFactEntity, oldId, newId, {
        happenedAt: set.happenedAt === undefined ? undefined : new Date(set.happenedAt),
        dealerId:
          set.dealer === undefined
            ? undefined
            : await findByCode(fact.tx, 'dealer', fact.author.plantId, set.dealer, '/set/dealer'),
        market: set.market,
        note: await keepNewText(fact, { table: 'life_fact', field: 'note' }, oldId, set.note),
      });
    });
  }
}
