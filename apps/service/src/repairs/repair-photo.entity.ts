import { Column, Entity } from 'typeorm';
import { PhotoRow } from '../platform/photos/photo-row.js';

/** A photo of an outside repair, and what it shows. */
@Entity({ schema: 'fact', name: 'repair_photo' })
export class RepairPhotoEntity extends PhotoRow {
  @Column('uuid', { name: 'repair_id' })
  repairId!: string;

  @Column('text')
  shows!: string;
}
