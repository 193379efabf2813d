import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A part was scrapped. It keeps its record, and its material stays in the balance. */
@Entity({ schema: 'fact', name: 'part_scrapped' })
export class PartScrappedEntity extends FactRow {
  @Column('uuid', { name: 'part_id' })
  partId!: string;

  @Column('integer')
  turn!: number;

  @Column('text')
  reason!: string;
}
