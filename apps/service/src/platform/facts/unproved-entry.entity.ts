import { Column, Entity } from 'typeorm';
import { FactRow } from './fact-row.js';

/** An entry that a device sent in the name of somebody who had not taken it over with a PIN. */
@Entity({ schema: 'fact', name: 'unproved_entry' })
export class UnprovedEntryEntity extends FactRow {
  @Column('uuid', { name: 'person_id' })
  personId!: string;
}

/** What the person said of it: that it is theirs, or why not. */
@Entity({ schema: 'fact', name: 'entry_confirmation' })
export class EntryConfirmationEntity extends FactRow {
  @Column('uuid', { name: 'unproved_entry_id' })
  unprovedEntryId!: string;

  @Column('boolean')
  confirmed!: boolean;

  @Column('text', { nullable: true })
  reason!: string | null;
}
