import { Column } from 'typeorm';
import { FactRow } from './fact-row.js';

/** A fact about something that was made: a lot, a layer, a repair, a hull. */
export abstract class AboutRow extends FactRow {
  /** null: of no part, as a lot. */
  @Column('uuid', { name: 'part_id', nullable: true })
  partId!: string | null;

  @Column('text', { name: 'about_kind' })
  aboutKind!: string;

  @Column('uuid', { name: 'about_id' })
  aboutId!: string;
}
