import { Injectable } from '@nestjs/common';
import type { RegisterPerson as Request } from '@hull-record/contracts';
import { commitment } from '@hull-record/evidence';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { newSecret } from '../platform/ids.js';
import { PersonDetailEntity } from './person-detail.entity.js';
import { PersonRoleEntity } from './person-role.entity.js';
import { PersonEntity } from './person.entity.js';

/** Registers a person: a badge with roles in the record; the name lies apart, and the journal holds a commitment to it. */
@Injectable()
export class RegisterPerson {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ code: string }>> {
    return this.record.run('person registered', request, (fact) => writePerson(fact, request), {
      journalled: withoutName,
    });
  }
}

/** Writes the rows of a person. */
export const writePerson = async (
  fact: Fact,
  request: Pick<Request, 'badge' | 'name' | 'roles'>,
): Promise<{ code: string }> => {
  const salt = newSecret();
  const personId = await fact.insert(PersonEntity, {
    badge: request.badge,
    nameCommitment: commitment(salt, request.name),
  });
  await fact.insertMany(
    PersonRoleEntity,
    request.roles.map((role) => ({ personId, role })),
  );
  await fact.tx.insert(PersonDetailEntity, { personId, name: request.name, salt });
  return { code: request.badge };
};

const withoutName = ({ name: _name, ...rest }: Request): Omit<Request, 'name'> => rest;
