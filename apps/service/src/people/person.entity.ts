import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A person as the record knows one: a badge, and a commitment to a name that lies elsewhere. */
@Entity({ schema: 'fact', name: 'person' })
export class PersonEntity extends FactRow {
  @Column('text')
  badge!: string;

  @Column('text', { name: 'name_commitment' })
  nameCommitment!: string;
}
