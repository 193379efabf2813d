import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** What a person was allowed to do, from when it happened. */
@Entity({ schema: 'fact', name: 'person_role' })
export class PersonRoleEntity extends FactRow {
  @Column('uuid', { name: 'person_id' })
  personId!: string;

  @Column('text')
  role!: string;

  /** For whom a person with the role dealer looks. */
  @Column('uuid', { name: 'dealer_id', nullable: true })
  dealerId!: string | null;
}
