import { Column, Entity } from 'typeorm';
import { FactRow } from './fact-row.js';

/** Something that was done against a rule. It is kept as it was done, and blocks release until it is disposed. */
@Entity({ schema: 'fact', name: 'nonconformity' })
export class NonconformityEntity extends FactRow {
  @Column('uuid', { name: 'part_id', nullable: true })
  partId!: string | null;

  @Column('text', { name: 'about_kind' })
  aboutKind!: string;

  @Column('uuid', { name: 'about_id' })
  aboutId!: string;

  @Column('text')
  rule!: string;

  @Column('text')
  detail!: string;
}
