import { Column, Entity } from 'typeorm';
import { PhotoRow } from '../platform/photos/photo-row.js';

/** A photo of a defect. */
@Entity({ schema: 'fact', name: 'photo' })
export class PhotoEntity extends PhotoRow {
  @Column('uuid', { name: 'defect_id' })
  defectId!: string;
}
