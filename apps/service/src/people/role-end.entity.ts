import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** The end of a role of a person; what was done under it stands. */
@Entity({ schema: 'fact', name: 'role_end' })
export class RoleEndEntity extends FactRow {
  @Column('uuid', { name: 'person_role_id' })
  personRoleId!: string;

  @Column('text')
  reason!: string;
}
