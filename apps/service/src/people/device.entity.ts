import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A device on which facts are entered. */
@Entity({ schema: 'fact', name: 'device' })
export class DeviceEntity extends FactRow {
  @Column('text')
  code!: string;

  @Column('text')
  description!: string;

  @Column('boolean', { name: 'rated_for_classified_area' })
  ratedForClassifiedArea!: boolean;
}
