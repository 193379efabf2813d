import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A text that somebody wrote freely, with its salt. It may be deleted; the record holds the commitment alone. */
@Entity({ schema: 'work', name: 'free_text' })
export class FreeTextEntity {
  /** As it stands in the column of the fact. */
  @PrimaryColumn('text')
  commitment!: string;

  @Column('text')
  value!: string;

  @Column('text')
  salt!: string;

  /** The journal entry that it came with. */
  @Column('uuid', { name: 'entry_id' })
  entryId!: string;
}
