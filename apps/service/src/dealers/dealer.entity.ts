import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A dealer to whom boats are delivered. */
@Entity({ schema: 'fact', name: 'dealer' })
export class DealerEntity extends FactRow {
  @Column('text')
  code!: string;

  @Column('text')
  name!: string;

  @Column('text')
  place!: string;
}
