import { Injectable } from '@nestjs/common';
import type { CorrectedValues } from '@hull-record/contracts';
import { wouldCycle } from '@hull-record/genealogy';
import { Amendments } from '../platform/facts/amendments.js';
import type { Fact } from '../platform/facts/fact.js';
import { insertVersion, readVersion } from '../platform/facts/new-version.js';
import { standing } from '../platform/facts/standing.js';
import { FROM_THE_LOT } from '../platform/lots/drawn-row.js';
import { findLots, type FoundLot } from '../platform/lots/find-lots.js';
import { LotInputEntity } from '../platform/lots/lot-input.entity.js';
import { kilogramsOf } from '../platform/lots/known-amount.js';
import { NotThere, Unprocessable } from '../platform/refusals.js';
import { findContainer } from '../platform/store/find-container.js';

type SetInput = Extract<CorrectedValues, { kind: 'lot input' }>;

/** Sets anew what went into a lot: another input or container, or another amount. */
@Injectable()
export class AmendLotInput {
  constructor(amendments: Amendments) {
    amendments.of('lot input', async (fact, oldId, newId, set) => {
      const old = await readVersion(fact, LotInputEntity, oldId);
      const box =
        set.container === undefined
          ? undefined
          : await findContainer(fact.tx, fact.author.plantId, set.container, '/set/container');
      const input = await findInput(fact, box?.lot_id ?? set.input ?? old.inputId);
      await assertNoCycle(fact, old.lotId, input, box ? '/set/container' : '/set/input');
      await insertVersion(fact, LotInputEntity, oldId, newId, {
        inputId: input.id,
        ...(box === undefined && set.input === undefined ? {} : { ...FROM_THE_LOT, containerId: box?.id ?? null }),
        ...amountOf(set, old, input),
      });
    });
  }
}

/** The amount as set, or the old one; in the unit it was entered in, also when the material is another. */
const amountOf = (set: SetInput, old: LotInputEntity, input: FoundLot) =>
  kilogramsOf(
    set.amount ?? ({ quantity: old.quantity, unit: old.unit, basis: old.basis } as NonNullable<SetInput['amount']>),
    input,
    '/set/amount',
  );

const findInput = async (fact: Fact, name: string): Promise<FoundLot> => {
  const found = (await findLots(fact.tx, fact.author.plantId, [name], fact.happenedAt)).get(name);
  if (!found) throw new NotThere('lot', name, '/set/input');
  return found;
};

const UPSTREAM = `
  with recursive up(id) as (
    select $1::uuid
    union
    select i.input_id from up join fact.lot_input i on i.lot_id = up.id and ${standing('i')}
  )
  select i.lot_id as lot, i.input_id as input, i.kg from up join fact.lot_input i on i.lot_id = up.id and ${standing('i')}`;

const assertNoCycle = async (fact: Fact, lotId: string, input: FoundLot, pointer: string): Promise<void> => {
  const upstream = await fact.tx.query<{ lot: string; input: string; kg: number }[]>(UPSTREAM, [input.id]);
  const cycle = wouldCycle(lotId, input.id, upstream);
  if (!cycle) return;
  const codes = await fact.tx.query<{ code: string }[]>(
    `select l.code from unnest($1::uuid[]) with ordinality way(id, n) join fact.lot l on l.root = way.id and ${standing('l')} order by way.n`,
    [cycle],
  );
  const way = codes.map(({ code }) => code).join(', made of ');
  throw new Unprocessable(
    'lot-made-of-itself',
    `A lot would be made of itself: ${way}. Name an input that is not made of it.`,
    pointer,
  );
};
