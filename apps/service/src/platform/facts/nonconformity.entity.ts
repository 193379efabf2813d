import { Column, Entity } from 'typeorm';
import { AboutRow } from './about-row.js';

/** Something that was done against a rule. It is kept as it was done, and blocks release until it is disposed. */
@Entity({ schema: 'fact', name: 'nonconformity' })
export class NonconformityEntity extends AboutRow {
  @Column('text')
  rule!: string;

  @Column('text')
  detail!: string;
}
