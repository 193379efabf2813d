import { Injectable } from '@nestjs/common';
import type { Amount, CorrectedValues } from '@hull-record/contracts';
import { Amendments } from '../platform/facts/amendments.js';
import { CorrectionEntity } from '../platform/facts/correction.entity.js';
import type { Fact } from '../platform/facts/fact.js';
import { insertVersion, readVersion } from '../platform/facts/new-version.js';
import { standing } from '../platform/facts/standing.js';
import { childId } from '../platform/ids.js';
import { findLots, type FoundLot } from '../platform/lots/find-lots.js';
import { kilogramsOf } from '../platform/lots/known-amount.js';
import { redraw } from '../platform/lots/redraw.js';
import { NotThere, Unprocessable } from '../platform/refusals.js';
import { ContainerEntity } from './container.entity.js';
import { HoldEntity } from '../platform/store/hold.entity.js';
import { LotCountEntity, LotLossEntity } from './lot-facts.entity.js';

const REASON = 'Its container is of another lot.';

/** Sets anew of which lot a container is, or how much is in it. All that names the container follows it to its lot. */
@Injectable()
export class AmendContainer {
  constructor(amendments: Amendments) {
    amendments.of('container', async (fact, oldId, newId, set) => {
      const old = await readVersion(fact, ContainerEntity, oldId);
      const lot = await findLot(fact, set, old);
      const entered = set.amount ?? ({ quantity: old.quantity, unit: old.unit, basis: old.basis } as Amount);
      const amount = kilogramsOf(entered, lot, '/set/amount');
      await insertVersion(fact, ContainerEntity, oldId, newId, { lotId: lot.id, ...amount });
      if (lot.id !== old.lotId) await follow(fact, old.root, lot.id);
    });
  }
}

/** Only what a supplier sent stands in drums that can be taken for one another; a made lot is what it is made of. */
const findLot = async (
  fact: Fact,
  set: Extract<CorrectedValues, { kind: 'container' }>,
  old: ContainerEntity,
): Promise<FoundLot> => {
  const name = set.lot ?? old.lotId;
  const lot = (await findLots(fact.tx, fact.author.plantId, [name], fact.happenedAt)).get(name);
  if (!lot) throw new NotThere('lot', name, '/set/lot');
  if (lot.id !== old.lotId && lot.origin !== 'received')
    throw new Unprocessable(
      'container-of-made-lot',
      `Lot ${lot.code} was not received: name the received lot, or correct what was drawn from the container.`,
      '/set/lot',
    );
  return lot;
};

/** What was drawn from the container, and its holds, losses and counts, are of the lot that it is of. */
const follow = async (fact: Fact, container: string, lot: string): Promise<void> => {
  for (const table of ['used', 'lot_input'] as const)
    for (const id of await named(fact, table, container)) await redraw(fact, table, { id, lot }, REASON);
  const TOLD = [
    ['hold', HoldEntity],
    ['lot_loss', LotLossEntity],
    ['lot_count', LotCountEntity],
  ] as const;
  for (const [table, entity] of TOLD)
    for (const id of await named(fact, table, container)) {
      const replacement = childId(fact.id, `is of another lot/${id}`);
      await fact.insert(CorrectionEntity, { corrects: id, correctsTable: table, replacement, reason: REASON });
      await insertVersion<HoldEntity | LotLossEntity | LotCountEntity>(fact, entity, id, replacement, { lotId: lot });
    }
};

const named = async (fact: Fact, table: string, container: string): Promise<readonly string[]> => {
  const rows = await fact.tx.query<{ id: string }[]>(
    `select x.id from fact.${table} x where x.container_id = $1 and ${standing('x')} order by x.id`,
    [container],
  );
  return rows.map(({ id }) => id);
};
