import { Injectable } from '@nestjs/common';
import type { EndRole, GrantRole, Role } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { Conflict, NotThere } from '../platform/refusals.js';
import { dealerFor } from './dealer-for.js';
import { PersonRoleEntity } from './person-role.entity.js';
import { RoleEndEntity } from './role-end.entity.js';

type Changed = Receipt<{ badge: string; role: Role }>;

const HELD = `
  select r.root as id from fact.person_role r
  where r.person_id = $1 and r.role = $2 and ${standing('r')}
    and not exists (select from fact.role_end e where e.person_role_id = r.root and ${standing('e')})`;

/** Gives a person one more role, or ends one. A role counts from when it was given to when it ended. */
@Injectable()
export class ChangeRoles {
  constructor(private readonly record: RecordFact) {}

  /** @throws NotThere, Conflict when the person has it */
  grant(badge: string, request: GrantRole): Promise<Changed> {
    return this.record.run('role given', { ...request, badge }, async (fact) => {
      const person = await waitForPerson(fact, badge);
      if ((await held(fact, person.id, request.role)).length > 0)
        throw new Conflict(
          'has-this-role',
          `${person.badge} has the role ${request.role}: nothing is to be done.`,
          '/role',
        );
      const dealerId = await dealerFor(fact.tx, [request.role], request.dealer);
      await fact.insert(PersonRoleEntity, { personId: person.id, role: request.role, dealerId });
      return { badge: person.badge, role: request.role };
    });
  }

  /** @throws NotThere, Conflict when the person does not have it, or nobody would be left to let others in */
  end(badge: string, request: EndRole): Promise<Changed> {
    return this.record.run('role ended', { ...request, badge }, async (fact) => {
      const person = await waitForPerson(fact, badge);
      const roles = await held(fact, person.id, request.role);
      if (roles.length === 0)
        throw new Conflict('has-not-this-role', `${person.badge} does not have the role ${request.role}.`, '/role');
      if (request.role === 'administrator') await assertOthers(fact, person.id);
      await fact.insertMany(
        RoleEndEntity,
        roles.map(({ id }) => ({ personRoleId: id, reason: request.reason })),
      );
      return { badge: person.badge, role: request.role };
    });
  }
}

const held = (fact: Fact, personId: string, role: Role): Promise<{ id: string }[]> =>
  fact.tx.query(HELD, [personId, role]);

/** Waits until nobody else changes roles in the plant: two who end each other's role leave one administrator. */
const waitForPerson = async (fact: Fact, badge: string): Promise<{ id: string; badge: string }> => {
  await fact.tx.query('select pg_advisory_xact_lock(hashtextextended($1, 9))', [fact.author.plantId]);
  const [person] = await fact.tx.query<{ id: string; badge: string }[]>(
    `select p.root as id, p.badge from fact.person p where lower(p.badge) = lower($1) and ${standing('p')}`,
    [badge],
  );
  if (!person) throw new NotThere('person', badge);
  return person;
};

const assertOthers = async (fact: Fact, personId: string): Promise<void> => {
  const others = await fact.tx.query<unknown[]>(
    `select from fact.person_role r where r.role = 'administrator' and r.person_id <> $1 and r.plant_id = $2 and ${standing('r')}
       and not exists (select from fact.role_end e where e.person_role_id = r.root and ${standing('e')}) limit 1`,
    [personId, fact.author.plantId],
  );
  if (others.length === 0)
    throw new Conflict('last-administrator', 'This is the last administrator: make another one first.', '/role');
};
