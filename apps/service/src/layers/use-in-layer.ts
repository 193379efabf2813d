import { Injectable } from '@nestjs/common';
import type { RecordUse as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { totalKg, writeUsed } from '../platform/used/write-used.js';
import { foreignMaterials } from '../platform/layers/foreign-materials.js';
import { readScheduleLayer } from '../platform/layers/find-schedule-layer.js';
import type { MadeResult } from './record-layer.js';

/** Adds what was used to a layer that is recorded already. */
@Injectable()
export class UseInLayer {
  constructor(private readonly record: RecordFact) {}

  run(layer: string, request: Request): Promise<Receipt<MadeResult>> {
    return this.record.run('used in layer', { ...request, layer }, async (fact) => {
      type Row = { id: string; root: string; part_id: string; schedule_layer_id: string };
      const found = await findStanding<Row>(fact.tx, 'layer_record', layer);
      const into = { kind: 'layer', id: found.root, partId: found.part_id } as const;
      const taken = await writeUsed(fact, into, request.used);
      const foreign = await foreignMaterials(
        fact.tx,
        await readScheduleLayer(fact.tx, found.schedule_layer_id),
        taken.map(({ lot }) => lot.id),
      );
      for (const broken of foreign)
        await fact.open({ ...broken, aboutKind: 'layer', aboutId: found.root, partId: found.part_id });
      return { kg: totalKg(taken), ...fact.found() };
    });
  }
}
