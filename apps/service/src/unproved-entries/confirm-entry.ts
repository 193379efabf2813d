import { Injectable } from '@nestjs/common';
import type { ConfirmEntry as Request } from '@hull-record/contracts';
import { NotAllowed } from '../platform/access/access-refusals.js';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { EntryConfirmationEntity } from '../platform/facts/unproved-entry.entity.js';
import { uuidOrNull } from '../platform/lookups/uuid-or-null.js';
import { InvalidRequest, NotThere } from '../platform/refusals.js';

/** Says of an entry that a device sent in the own name, without a PIN, whether it is the own. */
@Injectable()
export class ConfirmEntry {
  constructor(private readonly record: RecordFact) {}

  /** @throws NotThere, NotAllowed to anybody but the person it names, Conflict when it was said before */
  run(entry: string, request: Request): Promise<Receipt<{ confirmed: boolean }>> {
    const { confirmed, reason = null } = request;
    if (!confirmed && reason === null)
      throw new InvalidRequest([{ pointer: '/reason', detail: 'say why it is not yours' }]);
    return this.record.run('entry confirmed', { ...request, entry }, async (fact) => {
      const { id, personId, badge } = await find(fact, entry);
      if (personId !== fact.author.personId || fact.author.identity !== 'proved')
        throw new NotAllowed(`This is for ${badge} alone, signed in with a PIN or passphrase.`);
      await fact.insert(EntryConfirmationEntity, { unprovedEntryId: id, confirmed, reason });
      return { confirmed };
    });
  }
}

const find = async (fact: Fact, entry: string): Promise<{ id: string; personId: string; badge: string }> => {
  const [found] = await fact.tx.query<{ id: string; personId: string; badge: string }[]>(
    `select u.id, u.person_id as "personId", p.badge from fact.unproved_entry u
     join fact.person p on p.root = u.person_id and ${standing('p')}
     where (u.id = ${uuidOrNull('$1')} or u.entry_id = ${uuidOrNull('$1')}) and ${standing('u')}`,
    [entry],
  );
  if (!found) throw new NotThere('entry to be confirmed', entry);
  return found;
};
