import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A part joined to a hull. A part is in one hull at a time: the turn counts its joints that no longer stand. */
@Entity({ schema: 'fact', name: 'joint' })
export class JointEntity extends FactRow {
  @Column('uuid', { name: 'hull_id' })
  hullId!: string;

  @Column('uuid', { name: 'part_id' })
  partId!: string;

  @Column('integer')
  turn!: number;

  @Column('uuid', { array: true })
  makers!: string[];
}
