import type { EntityManager } from 'typeorm';
import type { Recipient } from '@hull-record/contracts';
import { standing } from '../facts/standing.js';
import { unwritten, type Addressee, type NoticeState } from './load-notice-state.js';

interface Person {
  readonly id: string;
  readonly name: string | null;
  readonly address: string | null;
  readonly email: string | null;
}

const PERSONS = `
  select d.root as id, d.name, d.place as address, null as email from fact.dealer d where d.root = any($1) and ${standing('d')}
  union all
  select w.owner_id, w.detail ->> 'name', w.detail ->> 'address', w.detail ->> 'email' from work.owner_detail w where w.owner_id = any($1)`;

const ORDER = ['dealer', 'first purchaser', 'later owner'];

/** Loads those a notice goes to with their names and addresses: personal data, for who may see owners alone. */
export const loadRecipients = async (tx: EntityManager, { addressees, noticed }: NoticeState): Promise<Recipient[]> => {
  const persons = await tx.query<Person[]>(PERSONS, [addressees.map(({ id }) => id)]);
  const byId = new Map(persons.map((person) => [person.id, person]));
  const numbers = new Map(noticed.map(({ owner, hull }) => [owner, hull]));
  const numberOf = (id: string): string => numbers.get(id) ?? '';
  return addressees
    .map((each) => toRecipient(each, byId.get(each.id), numberOf))
    .sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind) || (a.hulls.join() < b.hulls.join() ? -1 : 1));
};

const toRecipient = (to: Addressee, person: Person | undefined, numberOf: (id: string) => string): Recipient => ({
  kind: to.kind,
  hulls: to.hullIds.map(numberOf).sort(),
  dealer: to.dealer,
  owner: to.kind === 'dealer' ? null : to.id,
  ...{ name: person?.name ?? null, address: person?.address ?? null, email: person?.email ?? null },
  state: stateOf(to),
  mailings: to.letters.map(({ id, hull_id, class: by, proof, happenedAt, returned }) => ({
    ...{ id, hull: numberOf(hull_id), class: by, proof, happenedAt, returned },
  })),
});

const stateOf = (to: Addressee): Recipient['state'] => {
  if (to.letters.length > 0 && to.letters.every(({ returned }) => returned !== null)) return 'returned';
  if (unwritten(to).length === 0) return 'written to';
  return to.hasAddress ? 'to write to' : 'no address';
};
