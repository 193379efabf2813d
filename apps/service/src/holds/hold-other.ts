import { Injectable } from '@nestjs/common';
import type { HoldOther as Request, HoldPlaced } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import type { HeldOn } from '../platform/holds/reach-of-hold.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { moldStateAt } from '../platform/molds/mold.sql.js';
import { ON_NOTHING } from '../platform/store/hold.entity.js';
import { Unprocessable } from '../platform/refusals.js';
import { scopeAsked, writeHold } from './write-hold.js';

/** Holds equipment, a state of a mold, or what was made in a period: the hulls they reached wait for release. */
@Injectable()
export class HoldOther {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<HoldPlaced>> {
    return this.record.run(
      'hold placed',
      request,
      async (fact) => writeHold(fact, await thingOf(fact, request.on), request, scopeAsked(request)),
      { genealogy: 'alone' },
    );
  }
}

const thingOf = async (fact: Fact, on: Request['on']): Promise<Omit<HeldOn, 'plantId'>> => {
  const { plantId } = fact.author;
  if (on.what === 'equipment')
    return { ...ON_NOTHING, equipmentId: await findByCode(fact.tx, 'equipment', plantId, on.code, '/on/code') };
  if (on.what === 'period') return ON_NOTHING;
  const moldId = await findByCode(fact.tx, 'mold', plantId, on.code, '/on/code');
  const [{ state }] = await fact.tx.query<[{ state: number }]>(`select ${moldStateAt('$1::uuid', '$2')} as state`, [
    moldId,
    fact.happenedAt,
  ]);
  if (on.state !== undefined && on.state > state)
    throw new Unprocessable(
      'no-such-mold-state',
      `Mold ${on.code} was in state ${state} then: it has no state ${on.state} yet.`,
      '/on/state',
    );
  return { ...ON_NOTHING, moldId, moldState: on.state ?? state };
};
