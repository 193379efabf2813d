import { Column } from 'typeorm';
import { FactRow } from './fact-row.js';

/** Work accepted or refused by a person who did not do it; the makers travel with the key, so that the database sees it. */
export abstract class AcceptanceRow extends FactRow {
  @Column('uuid', { array: true })
  makers!: string[];

  @Column('uuid', { name: 'accepted_by' })
  acceptedBy!: string;

  @Column('boolean')
  accepted!: boolean;

  @Column('text', { nullable: true })
  note!: string | null;

  @Column('integer')
  turn!: number;
}
