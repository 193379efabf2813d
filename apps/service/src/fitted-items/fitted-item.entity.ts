import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** An item with a serial number that was fitted to a hull, ours or supplied by the customer. */
@Entity({ schema: 'fact', name: 'fitted_item' })
export class FittedItemEntity extends FactRow {
  @Column('uuid', { name: 'hull_id' })
  hullId!: string;

  @Column('text')
  what!: string;

  @Column('text')
  serial!: string;

  @Column('text', { nullable: true })
  maker!: string | null;

  @Column('boolean', { name: 'customer_supplied' })
  customerSupplied!: boolean;

  @Column('text', { nullable: true })
  note!: string | null;
}

/** A fitted item was taken off again. */
@Entity({ schema: 'fact', name: 'item_removed' })
export class ItemRemovedEntity extends FactRow {
  @Column('uuid', { name: 'fitted_item_id' })
  fittedItemId!: string;

  @Column('integer')
  turn!: number;

  @Column('text')
  reason!: string;
}
