import { Column, Entity } from 'typeorm';
import { FactRow } from '../facts/fact-row.js';

/** An area of a photo that is blacked out, in fractions of its width and height from the top left. */
export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** That a freely written text was given another wording, by whom and why, and what became of the original. */
@Entity({ schema: 'fact', name: 'text_redacted' })
export class TextRedactedEntity extends FactRow {
  @Column('text', { name: 'of_table' })
  ofTable!: string;

  @Column('uuid', { name: 'of_root' })
  ofRoot!: string;

  @Column('text')
  field!: string;

  @Column('text')
  wording!: string;

  @Column('text')
  reason!: string;

  @Column('text')
  original!: 'erased' | 'kept apart' | 'in the journal';
}

/** That areas of a photo were blacked out: the copy that is shown from then on, and what became of the original. */
@Entity({ schema: 'fact', name: 'photo_redacted' })
export class PhotoRedactedEntity extends FactRow {
  @Column('uuid', { name: 'photo_id' })
  photoId!: string;

  @Column('jsonb')
  areas!: readonly Area[];

  @Column('text')
  reason!: string;

  @Column('text')
  original!: 'erased' | 'kept apart';

  @Column('text', { name: 'shown_sha256' })
  shownSha256!: string;
}
