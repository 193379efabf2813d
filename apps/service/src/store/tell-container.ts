import { Injectable } from '@nestjs/common';
import type { TellContainer as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findContainer } from '../platform/store/find-container.js';
import { openUsedMeanwhile } from '../platform/store/open-used-meanwhile.js';
import { ContainerFactEntity } from './container.entity.js';

/** Records what became of a container. A rejected one is rejected alone: the rest of its lot is not. */
@Injectable()
export class TellContainer {
  constructor(private readonly record: RecordFact) {}

  run(label: string, request: Request): Promise<Receipt<{ what: string }>> {
    return this.record.run(`container ${request.what}`, { ...request, label }, async (fact) => {
      const { id, lot_id } = await findContainer(fact.tx, fact.author.plantId, label);
      const { what, place = null, note = null } = request;
      await fact.insert(ContainerFactEntity, { containerId: id, what, place, note });
      if (what === 'rejected')
        await openUsedMeanwhile(
          fact,
          { lotId: lot_id, containerId: id },
          'container-rejected',
          `Container ${label} was rejected, and was used after that.`,
        );
      return { what };
    });
  }
}
