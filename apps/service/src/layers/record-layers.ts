import { Injectable } from '@nestjs/common';
import type { RecordLayers as Request, Taken } from '@hull-record/contracts';
import { splitAmount, SplitImpossible, weakestBasis } from '@hull-record/trade';
import type { Fact, Found } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { judgeAlone } from '../platform/verdicts/keep-verdict.js';
import { InvalidRequest, Unprocessable } from '../platform/refusals.js';
import { RecordLayer } from './record-layer.js';

export interface MadeLayers extends Found {
  readonly kg: number;
  readonly layers: readonly { readonly part: string; readonly id: string }[];
}

/**
 * Records the same layer of several parts in one entry: one crew, one climate, one bucket. What was used is spread over
 * the parts by weights, to the last digit; its basis is apportioned at best.
 */
@Injectable()
export class RecordLayers {
  constructor(
    private readonly record: RecordFact,
    private readonly one: RecordLayer,
  ) {}

  run(request: Request): Promise<Receipt<MadeLayers>> {
    const parts = request.parts.map(({ part }) => part);
    const twice = parts.findIndex((part, i) => parts.indexOf(part) < i);
    if (twice >= 0) throw new InvalidRequest([{ pointer: `/parts/${twice}/part`, detail: 'is named twice' }]);
    const shares = request.used.map((taken, i) => split(request, taken, i));
    return this.record.run('layers recorded', request, async (fact) => {
      await judgeTogether(fact, parts);
      const layers: { part: string; id: string }[] = [];
      let kg = 0;
      for (const [k, { part }] of request.parts.entries()) {
        const used = shares.map((share) => share[k] as Taken);
        const made = await this.one.decide(fact, part, { ...request, used });
        layers.push({ part, id: made.layer });
        kg += made.kg;
      }
      return { kg, layers, ...foundIn(fact) };
    });
  }
}

/** Two entries of the same parts in another order must not wait for each other. */
const judgeTogether = async (fact: Fact, parts: readonly string[]): Promise<void> => {
  const ids: string[] = [];
  for (const [k, part] of parts.entries())
    ids.push(await findByCode(fact.tx, 'part', fact.author.plantId, part, `/parts/${k}/part`));
  for (const id of ids.sort()) await judgeAlone(fact, 'order of layers', id);
};

const foundIn = (fact: Fact): Found => fact.found();

/** One entry of what was used, as each part got it. */
const split = ({ parts }: Request, taken: Taken, i: number): readonly Taken[] => {
  try {
    const quantities = splitAmount(
      taken.amount.quantity,
      parts.map(({ weight }) => weight),
    );
    const basis = weakestBasis([taken.amount.basis, 'apportioned']);
    return quantities.map((quantity) => ({ ...taken, amount: { ...taken.amount, quantity, basis } }));
  } catch (error) {
    if (!(error instanceof SplitImpossible)) throw error;
    throw new Unprocessable(error.code, error.message, `/used/${i}/amount`);
  }
};
