import { Injectable } from '@nestjs/common';
import type { RedactText as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { keepsData } from '../platform/life/keeps-data.js';
import { NotThere, Unprocessable } from '../platform/refusals.js';
import { isCommitment } from '../platform/texts/free-texts.js';
import { TextRedactedEntity } from '../platform/texts/redaction.entities.js';
import { KINDS, type KindOfText } from './kinds.js';

export interface RedactedText {
  readonly original: TextRedactedEntity['original'];
  readonly keptBecause: string | null;
}

/**
 * Gives a freely written text another wording, shown in its place from then on. The original is erased with its salt;
 * while something stands against that, it is kept apart, and the same act done again later erases it. What was recorded
 * before texts lay apart stands in the journal, and stays there: the receipt says so.
 */
@Injectable()
export class RedactText {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<RedactedText>> {
    return this.record.run('text redacted', request, async (fact) => {
      const kind = KINDS[request.kind];
      const { root, hullId, apart } = await findText(fact, kind, request);
      const today = fact.recordedAt.toISOString().slice(0, 10);
      const because = apart && hullId !== null ? (await keepsData(fact.tx, hullId, today)).because : null;
      const original = !apart ? 'in the journal' : because === null ? 'erased' : 'kept apart';
      if (original === 'erased') await erase(fact, kind, root);
      await fact.insert(TextRedactedEntity, {
        ...{ ofTable: kind.table, ofRoot: root, field: kind.field },
        ...{ wording: request.wording, reason: request.reason, original },
      });
      return { original, keptBecause: because };
    });
  }
}

interface FoundText {
  readonly root: string;
  readonly hullId: string | null;
  /** Whether every version of it lies apart. */
  readonly apart: boolean;
}

const findText = async (fact: Fact, { table, field, hull }: KindOfText, request: Request): Promise<FoundText> => {
  const [found] = await fact.tx.query<(FoundText & { written: boolean })[]>(
    `select x.root, ${hull} as "hullId",
       (select bool_and(${isCommitment(`v.${field}`)}) from fact.${table} v where v.root = x.root and v.${field} is not null) as apart,
       exists (select from fact.${table} v where v.root = x.root and v.${field} is not null) as written
     from fact.${table} x where x.id = $1 and x.plant_id = $2`,
    [request.of, fact.author.plantId],
  );
  if (!found) throw new NotThere(request.kind, request.of, '/of');
  if (!found.written)
    throw new Unprocessable('no-text', 'Nothing was written there: there is nothing to redact.', '/of');
  return found;
};

/** Every version of it, so that none is left behind. */
const erase = async (fact: Fact, { table, field }: KindOfText, root: string): Promise<void> => {
  await fact.tx.query(
    `delete from work.free_text k using fact.${table} v where v.root = $1 and k.commitment = v.${field}`,
    [root],
  );
};
