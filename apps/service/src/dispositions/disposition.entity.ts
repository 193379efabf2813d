import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** What is done about something that is not as it should be (ISO 9000). */
@Entity({ schema: 'fact', name: 'disposition' })
export class DispositionEntity extends FactRow {
  @Column('text', { name: 'of_kind' })
  ofKind!: string;

  @Column('uuid', { name: 'of_id' })
  ofId!: string;

  @Column('integer')
  turn!: number;

  @Column('text')
  disposition!: string;

  @Column('text', { nullable: true })
  concession!: string | null;

  @Column('text')
  reason!: string;
}
