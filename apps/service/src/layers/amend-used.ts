import { Injectable } from '@nestjs/common';
import type { CorrectedValues } from '@hull-record/contracts';
import { Amendments } from '../platform/facts/amendments.js';
import type { Fact } from '../platform/facts/fact.js';
import { insertVersion, readVersion } from '../platform/facts/new-version.js';
import { PLACES } from '../platform/composition/refresh-places.js';
import { findLots, lotInTank, type FoundLot } from '../platform/lots/find-lots.js';
import { kilogramsOf } from '../platform/lots/resolve-taken.js';
import { NotThere } from '../platform/refusals.js';
import { UsedEntity } from '../platform/used/used.entity.js';

type SetUsed = Extract<CorrectedValues, { kind: 'used' }>;

/** Sets anew what was used: another lot, another amount, another layer, joint or repair, another time. */
@Injectable()
export class AmendUsed {
  constructor(amendments: Amendments) {
    amendments.of('used', async (fact, oldId, newId, set) => {
      const old = await readVersion(fact, UsedEntity, oldId);
      const happenedAt = set.happenedAt === undefined ? old.happenedAt : new Date(set.happenedAt);
      const lot = await lotOf(fact, set, old, happenedAt);
      const into = set.into === undefined ? {} : await findInto(fact, set.into);
      await insertVersion(fact, UsedEntity, oldId, newId, {
        lotId: lot.id,
        tankId: set.lot === undefined ? old.tankId : null,
        ...into,
        ...amountOf(set, old, lot),
        happenedAt,
      });
    });
  }
}

const amountOf = (set: SetUsed, old: UsedEntity, lot: FoundLot) =>
  kilogramsOf(
    set.amount ?? ({ quantity: old.quantity, unit: old.unit, basis: old.basis } as NonNullable<SetUsed['amount']>),
    lot,
    '/set/amount',
  );

/** The lot as set; or, of what was drawn from a tank, the lot that was in it at the time as set; or the old one. */
const lotOf = (fact: Fact, set: SetUsed, old: UsedEntity, at: Date): Promise<FoundLot> =>
  set.lot === undefined && old.tankId !== null
    ? lotInTank(fact, old.tankId, at, '/set/happenedAt')
    : findLot(fact, set.lot ?? old.lotId);

const findLot = async (fact: Fact, name: string): Promise<FoundLot> => {
  const found = (await findLots(fact.tx, fact.author.plantId, [name], fact.happenedAt)).get(name);
  if (!found) throw new NotThere('lot', name, '/set/lot');
  return found;
};

const findInto = async (fact: Fact, id: string): Promise<{ intoKind: UsedEntity['intoKind']; intoId: string }> => {
  const [found] = await fact.tx.query<{ place_id: string; into_kind: UsedEntity['intoKind'] }[]>(PLACES, [[id]]);
  if (!found) throw new NotThere('layer, joint or repair', id, '/set/into');
  return { intoKind: found.into_kind, intoId: found.place_id };
};
