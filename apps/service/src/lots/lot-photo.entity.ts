import { Column, Entity } from 'typeorm';
import { PhotoRow } from '../platform/photos/photo-row.js';

/** A photo of the certificate that a lot came with; of unidentified material, of itself. */
@Entity({ schema: 'fact', name: 'lot_photo' })
export class LotPhotoEntity extends PhotoRow {
  @Column('uuid', { name: 'lot_id' })
  lotId!: string;
}
