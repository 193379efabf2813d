import { Injectable } from '@nestjs/common';
import type { SignHoldPoint as Request } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { isUnproved } from '../platform/facts/unproved.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { Unprocessable } from '../platform/refusals.js';
import { judgeOrder } from './judge-order.js';
import { SignatureEntity } from './signature.entity.js';

interface Layer {
  readonly id: string;
  readonly root: string;
  readonly makers: string[];
  readonly schedule_layer_id: string;
  readonly part_id: string;
}

/** SQL: more was used in the layer after a signature was recorded, so that it has to be signed again. */
const outdated = (s: string, layer: string): string => `exists (
  select from fact.used late where late.into_id = ${layer} and late.root = late.id and late.recorded_at > ${s}.recorded_at and ${standing('late')})`;

/** Signs the hold point of a layer as it is recorded now. The database refuses a signer who made it. */
@Injectable()
export class SignHoldPoint {
  constructor(private readonly record: RecordFact) {}

  run(layer: string, request: Request): Promise<Receipt<{ holdPoint: string; identity: string }>> {
    return this.record.run('hold point signed', { ...request, layer }, async (fact) => {
      const made = await findStanding<Layer>(fact.tx, 'layer_record', layer);
      const [about] = await fact.tx.query<{ hold_point: string | null; turn: number }[]>(
        `select y.hold_point, (select count(*)::int + 1 from fact.signature s where s.layer_record_id = $2 and (not (${standing('s')}) or ${outdated('s', '$3')} or ${isUnproved('s.entry_id')})) as turn
         from fact.schedule_layer y where y.id = $1`,
        [made.schedule_layer_id, made.id, made.root],
      );
      if (!about?.hold_point)
        throw new Unprocessable(
          'no-hold-point',
          'This layer does not end in a hold point: there is nothing to sign.',
          '',
        );
      const { makers } = made;
      await fact.insert(SignatureEntity, {
        layerRecordId: made.id,
        makers,
        signedBy: fact.author.personId,
        turn: about.turn,
      });
      await judgeOrder(fact, made.part_id, { since: fact.happenedAt });
      return { holdPoint: about.hold_point, identity: fact.author.identity };
    });
  }
}
