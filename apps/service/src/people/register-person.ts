import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { RegisterPerson as Request } from '@hull-record/contracts';
import { commitment } from '@hull-record/evidence';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { newSecret } from '../platform/ids.js';
import { ClientIdReused } from '../platform/refusals.js';
import { dealerFor } from './dealer-for.js';
import { PersonDetailEntity } from './person-detail.entity.js';
import { PersonRoleEntity } from './person-role.entity.js';
import { PersonEntity } from './person.entity.js';

/** Registers a person: a badge with roles in the record; the name lies apart, and the journal holds a commitment to it. */
@Injectable()
export class RegisterPerson {
  constructor(
    private readonly record: RecordFact,
    private readonly db: DataSource,
  ) {}

  async run(request: Request): Promise<Receipt<{ code: string }>> {
    const receipt = await this.record.run('person registered', request, (fact) => writePerson(fact, request), {
      journalled: withoutName,
    });
    if (receipt.replayed) await this.assertSameName(request);
    return receipt;
  }

  /** The digest of a request leaves names out, so a retry is compared with the name that is kept. */
  private async assertSameName({ id, name }: Request): Promise<void> {
    const kept = await this.db.manager.findOneBy(PersonDetailEntity, { personId: id });
    if (kept && kept.name !== name) throw new ClientIdReused(id);
  }
}

/** Writes the rows of a person. */
export const writePerson = async (
  fact: Fact,
  request: Pick<Request, 'badge' | 'name' | 'roles' | 'dealer'>,
): Promise<{ code: string }> => {
  const dealerId = await dealerFor(fact.tx, request.roles, request.dealer);
  const salt = newSecret();
  const personId = await fact.insert(PersonEntity, {
    badge: request.badge,
    nameCommitment: commitment(salt, request.name),
  });
  await fact.insertMany(
    PersonRoleEntity,
    request.roles.map((role) => ({ personId, role, dealerId: role === 'dealer' ? dealerId : null })),
  );
  await fact.tx.insert(PersonDetailEntity, { personId, name: request.name, salt });
  return { code: request.badge };
};

const withoutName = ({ name: _name, ...rest }: Request): Omit<Request, 'name'> => rest;
