import { Column, Entity } from 'typeorm';
import { FactRow } from '../facts/fact-row.js';

/** A lot that unidentified material may be of. */
@Entity({ schema: 'fact', name: 'lot_candidate' })
export class LotCandidateEntity extends FactRow {
  @Column('uuid', { name: 'lot_id' })
  lotId!: string;

  @Column('uuid', { name: 'candidate_id' })
  candidateId!: string;
}
