import { Injectable } from '@nestjs/common';
import type { SetWarrantyTerms as Request } from '@hull-record/contracts';
import { isDefectKind } from '@hull-record/trade';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { InvalidRequest } from '../platform/refusals.js';
import { WarrantyTermsEntity } from './warranty-terms.entity.js';

/** Publishes the next version of the warranty terms of a model. The versions before it stay as they are. */
@Injectable()
export class SetWarrantyTerms {
  constructor(private readonly record: RecordFact) {}

  run(model: string, request: Request): Promise<Receipt<{ version: number }>> {
    assertKinds(request);
    return this.record.run('warranty terms set', { ...request, model }, async (fact) => {
      const modelId = await findByCode(fact.tx, 'model', fact.author.plantId, model);
      const version = await nextVersion(fact, modelId);
      const { fromModelYear, toModelYear, starts, covers, transfer, exclusions, reason } = request;
      await fact.insert(WarrantyTermsEntity, {
        ...{ modelId, version, fromModelYear, toModelYear, starts, covers, transfer, exclusions, reason },
      });
      return { version };
    });
  }
}

const assertKinds = ({ covers }: Request): void => {
  const named = new Set<string>();
  const wrong = covers.flatMap(({ kinds }, i) =>
    kinds.flatMap((kind, k) => {
      const pointer = `/covers/${i}/kinds/${k}`;
      if (!isDefectKind(kind))
        return [{ pointer, detail: `${kind} is not a kind of defect: see GET /api/defect-kinds` }];
      if (named.has(kind)) return [{ pointer, detail: `${kind} is covered already: name it once` }];
      named.add(kind);
      return [];
    }),
  );
  if (wrong.length > 0) throw new InvalidRequest(wrong);
};

/** Versions are counted under a lock of the model: two at once get two numbers. */
const nextVersion = async (fact: Fact, modelId: string): Promise<number> => {
  await fact.tx.query('select pg_advisory_xact_lock(hashtextextended($1, 7))', [`warranty terms/${modelId}`]);
  const [row] = await fact.tx.query<{ next: number }[]>(
    'select coalesce(max(t.version), 0) + 1 as next from fact.warranty_terms t where t.model_id = $1',
    [modelId],
  );
  return row?.next ?? 1;
};
