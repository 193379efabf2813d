import { Column, Entity } from 'typeorm';
import { AmountRow } from '../platform/facts/amount-row.js';
import { FactRow } from '../platform/facts/fact-row.js';

/** A drum, tote, pail, roll or sheet of one lot, with its own label. */
@Entity({ schema: 'fact', name: 'container' })
export class ContainerEntity extends AmountRow {
  @Column('uuid', { name: 'lot_id' })
  lotId!: string;

  @Column('text')
  label!: string;

  @Column('text')
  kind!: string;
}

/** What became of a container: moved, opened, returned to stock, emptied, rejected alone, accepted again. */
@Entity({ schema: 'fact', name: 'container_fact' })
export class ContainerFactEntity extends FactRow {
  @Column('uuid', { name: 'container_id' })
  containerId!: string;

  @Column('text')
  what!: string;

  @Column('text', { nullable: true })
  place!: string | null;

  @Column('text', { nullable: true })
  note!: string | null;
}
