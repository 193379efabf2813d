import { Injectable } from '@nestjs/common';
import type { MailNotice as Request } from '@hull-record/contracts';
import { mayGoBy } from '@hull-record/trade';
import type { Fact } from '../platform/facts/fact.js';
import { assertNotBefore } from '../platform/facts/assert-not-before.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { loadNotice, type LoadedNotice } from '../platform/notices/load-notice.js';
import type { Addressee } from '../platform/notices/load-notice-state.js';
import { Unprocessable } from '../platform/refusals.js';
import { NoticeMailingEntity } from './notice.entity.js';

type Asked = Request['recipients'][number];

/** Records letters that were mailed: to whom, by what class, when, and the proof. */
@Injectable()
export class MailNotice {
  constructor(private readonly record: RecordFact) {}

  run(notice: string, request: Request): Promise<Receipt<{ mailed: number }>> {
    return this.record.run('notice mailed', { ...request, notice }, async (fact) => {
      const loaded = await loadNotice(fact.tx, notice);
      assertNotBefore(fact, loaded.notice.happenedAt, 'The notice');
      const rows = [];
      for (const [i, asked] of request.recipients.entries()) {
        const { hullId, to } = await recipientOf(fact, loaded, asked, `/recipients/${i}`);
        if (!mayGoBy(to.kind, request.class))
          throw new Unprocessable(
            'class-of-mail',
            'Purchasers are told by first-class or certified mail, 46 USC 4310(c)(1)(A).',
            '/class',
          );
        rows.push({
          ...{ noticeId: loaded.notice.id, hullId, toWhat: to.kind, class: request.class, proof: asked.proof ?? null },
          dealerId: to.kind === 'dealer' ? to.id : null,
          ownerId: to.kind === 'dealer' ? null : to.id,
        });
      }
      await fact.insertMany(NoticeMailingEntity, rows);
      return { mailed: rows.length };
    });
  }
}

const recipientOf = async (
  fact: Fact,
  { state }: LoadedNotice,
  { hull, dealer, owner }: Asked,
  pointer: string,
): Promise<{ readonly hullId: string; readonly to: Addressee }> => {
  const hullId = await findHull(fact.tx, hull, `${pointer}/hull`);
  const id =
    dealer === undefined
      ? owner?.toLowerCase()
      : await findByCode(fact.tx, 'dealer', fact.author.plantId, dealer, `${pointer}/dealer`);
  const to = state.addressees.find((each) => each.id === id && each.hullIds.includes(hullId));
  if (!to)
    throw new Unprocessable(
      'no-recipient',
      `The notice does not go to them for hull ${hull}: look at its recipients.`,
      dealer === undefined ? `${pointer}/owner` : `${pointer}/dealer`,
    );
  return { hullId, to };
};
