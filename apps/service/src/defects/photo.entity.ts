import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A photo: the original as it came, by its hash, and the copy without metadata that is shown. */
@Entity({ schema: 'fact', name: 'photo' })
export class PhotoEntity extends FactRow {
  @Column('uuid', { name: 'defect_id' })
  defectId!: string;

  @Column('text', { name: 'original_sha256' })
  originalSha256!: string;

  @Column('text', { name: 'original_type' })
  originalType!: string;

  @Column('integer', { name: 'original_bytes' })
  originalBytes!: number;

  @Column('text', { name: 'shown_sha256' })
  shownSha256!: string;

  @Column('integer')
  width!: number;

  @Column('integer')
  height!: number;
}
