import { Column, Entity } from 'typeorm';
import type { PlaceKind } from '../places/places.js';
import { DrawnRow } from '../lots/drawn-row.js';

/** An amount of a lot put into a layer, a joint or a repair. */
@Entity({ schema: 'fact', name: 'used' })
export class UsedEntity extends DrawnRow {
  @Column('uuid', { name: 'lot_id' })
  lotId!: string;

  @Column('text', { name: 'into_kind' })
  intoKind!: PlaceKind | 'mold care';

  @Column('uuid', { name: 'into_id' })
  intoId!: string;
}
