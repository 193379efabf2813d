import { Injectable } from '@nestjs/common';
import type { ApportionDrop as Request, Taken } from '@hull-record/contracts';
import { splitAmount, SplitImpossible } from '@hull-record/trade';
import type { Fact, Found } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { InvalidRequest, Unprocessable } from '../platform/refusals.js';
import { totalKg, writeUsed } from '../platform/used/write-used.js';

export interface Apportioned extends Found {
  readonly kg: number;
  readonly parts: readonly { readonly layer: string; readonly quantity: string; readonly unit: string }[];
}

interface Layer {
  readonly root: string;
  readonly part_id: string;
  readonly ended_at: Date;
}

/**
 * Spreads what a tank, drum or gun lost over the layers that were sprayed from it, by weights: nobody weighs what goes
 * on a layer. The parts sum exactly to the drop, and their basis is apportioned.
 */
@Injectable()
export class ApportionDrop {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<Apportioned>> {
    return this.record.run('drop apportioned', request, async (fact) => {
      const layers = await findLayers(fact, request);
      const quantities = splitOf(request);
      let kg = 0;
      for (const [i, layer] of layers.entries()) {
        const amount = { ...request.amount, quantity: quantities[i] as string, basis: 'apportioned' as const };
        const into = { kind: 'layer', id: layer.root, partId: layer.part_id } as const;
        const taken: Taken = { ...request.from, amount };
        kg += totalKg(await writeUsed(fact, into, [taken], layer.ended_at, () => '/from'));
      }
      const parts = layers.map(({ root }, i) => ({
        layer: root,
        quantity: quantities[i] as string,
        unit: request.amount.unit,
      }));
      return { kg, parts, ...fact.found() };
    });
  }
}

const findLayers = async (fact: Fact, { over }: Request): Promise<readonly Layer[]> => {
  const layers: Layer[] = [];
  for (const [i, { layer }] of over.entries())
    layers.push(await findStanding<Layer & { id: string }>(fact.tx, 'layer_record', layer, `/over/${i}/layer`));
  const twice = layers.findIndex(({ root }, i) => layers.findIndex((other) => other.root === root) < i);
  if (twice >= 0)
    throw new InvalidRequest([{ pointer: `/over/${twice}/layer`, detail: 'is named twice: add its weights' }]);
  return layers;
};

const splitOf = ({ amount, over }: Request): readonly string[] => {
  try {
    return splitAmount(
      amount.quantity,
      over.map(({ weight }) => weight),
    );
  } catch (error) {
    if (!(error instanceof SplitImpossible)) throw error;
    throw new Unprocessable(error.code, error.message, '/over');
  }
};
