import { Column } from 'typeorm';
import { FactRow } from '../facts/fact-row.js';

/** What is kept of a photo: the original as it came, by its hash, and the copy without metadata that is shown. */
export abstract class PhotoRow extends FactRow {
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
