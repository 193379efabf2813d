import { Column, Entity } from 'typeorm';
import { FactRow } from '../facts/fact-row.js';

/** A fact in the life of a boat. */
@Entity({ schema: 'fact', name: 'life_fact' })
export class LifeFactEntity extends FactRow {
  @Column('uuid', { name: 'hull_id' })
  hullId!: string;

  @Column('text')
  what!: string;

  @Column('uuid', { name: 'dealer_id', nullable: true })
  dealerId!: string | null;

  /** On which it was placed when it left. */
  @Column('text', { nullable: true })
  market!: string | null;

  @Column('text', { nullable: true })
  note!: string | null;
}
