import { Injectable } from '@nestjs/common';
import type { LabelContainers as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { kilogramsOf } from '../platform/lots/known-amount.js';
import { InvalidRequest } from '../platform/refusals.js';
import { ContainerEntity, ContainerFactEntity } from './container.entity.js';
import { findLotOrContainer } from '../platform/store/find-lot-or-container.js';

/** Labels the drums, pails, rolls or sheets of a lot, and says where they stand. */
@Injectable()
export class LabelContainers {
  constructor(private readonly record: RecordFact) {}

  run(lot: string, request: Request): Promise<Receipt<{ labels: readonly string[]; kg: number }>> {
    const labels = request.containers.map(({ label }) => label);
    const twice = labels.findIndex((label, i) => labels.indexOf(label) < i);
    if (twice >= 0)
      throw new InvalidRequest([{ pointer: `/containers/${twice}/label`, detail: 'is given twice: each has its own' }]);
    return this.record.run('containers labelled', { ...request, lot }, async (fact) => {
      const found = (await findLotOrContainer(fact, lot, undefined)).lot;
      const amounts = request.containers.map(({ amount }, i) => kilogramsOf(amount, found, `/containers/${i}/amount`));
      const ids = await fact.insertMany(
        ContainerEntity,
        request.containers.map(({ label, kind }, i) => ({
          lotId: found.id,
          label,
          kind,
          ...(amounts[i] as (typeof amounts)[number]),
        })),
      );
      await fact.insertMany(
        ContainerFactEntity,
        request.containers.flatMap(({ place }, i) =>
          place === undefined ? [] : [{ containerId: ids[i] as string, what: 'moved', place, note: null }],
        ),
      );
      return { labels, kg: amounts.reduce((sum, { kg }) => sum + kg, 0) };
    });
  }
}
