import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A number that means one hull for ever: hull numbers and HINs share one key, so that none is issued twice. */
@Entity({ schema: 'fact', name: 'hull_number' })
export class HullNumberEntity extends FactRow {
  @Column('uuid', { name: 'hull_id' })
  hullId!: string;

  @Column('text')
  kind!: 'hull number' | 'HIN';

  @Column('text')
  normalised!: string;

  @Column('text', { name: 'as_printed' })
  asPrinted!: string;

  @Column('text', { nullable: true })
  reason!: string | null;

  /** Of a HIN that was corrected after it was affixed: who authorised it. */
  @Column('text', { nullable: true })
  authority!: string | null;
}
