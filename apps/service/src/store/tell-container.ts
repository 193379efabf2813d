import { Injectable } from '@nestjs/common';
import type { TellContainer as Request } from '@hull-record/contracts';
import type { OpenedNonconformity } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findContainer } from '../platform/store/find-container.js';
import { ContainerFactEntity } from './container.entity.js';

/**
 * Records what became of a container. A rejected one is rejected alone: the rest of its lot is not. A rejection is
 * recorded alone in the plant, so that a use at the same moment sees it or is seen by it.
 */
@Injectable()
export class TellContainer {
  constructor(private readonly record: RecordFact) {}

  run(
    label: string,
    request: Request,
  ): Promise<Receipt<{ what: string; nonconformities: readonly OpenedNonconformity[] }>> {
    const { what, place = null, note = null } = request;
    return this.record.run(
      `container ${what}`,
      { ...request, label },
      async (fact) => {
        const { id } = await findContainer(fact.tx, fact.author.plantId, label);
        await fact.insert(ContainerFactEntity, { containerId: id, what, place, note });
        return { what, nonconformities: fact.nonconformities };
      },
      { genealogy: what === 'rejected' ? 'alone' : 'one of many' },
    );
  }
}
