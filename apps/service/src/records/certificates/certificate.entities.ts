import type { ChangedValue } from '@hull-record/contracts';
import { Column, Entity, PrimaryColumn } from 'typeorm';
import { FactRow } from '../../platform/facts/fact-row.js';

/** An issue of the certificate of a hull. */
@Entity({ schema: 'fact', name: 'certificate' })
export class CertificateEntity extends FactRow {
  @Column('uuid', { name: 'hull_id' })
  hullId!: string;

  @Column('text')
  number!: string;

  @Column('integer')
  issue!: number;

  /** SHA-256 of the code that is printed on it. */
  @Column('bytea', { name: 'code_digest' })
  codeDigest!: Buffer;

  /** What it prints, as canonical JSON (RFC 8785). */
  @Column('text')
  content!: string;
}

/** The file that was signed for an issue. It is never drawn again. */
@Entity({ schema: 'fact', name: 'certificate_file' })
export class CertificateFileEntity extends FactRow {
  @Column('uuid', { name: 'certificate_id' })
  certificateId!: string;

  @Column('text')
  sha256!: string;

  @Column('integer')
  bytes!: number;
}

/** An issue was withdrawn. */
@Entity({ schema: 'fact', name: 'certificate_withdrawn' })
export class CertificateWithdrawnEntity extends FactRow {
  @Column('uuid', { name: 'certificate_id' })
  certificateId!: string;

  @Column('text')
  reason!: string;

  /** The entry of the journal, such as a correction, that it follows from; null when a person withdrew it. */
  @Column('uuid', { name: 'because_of', nullable: true })
  becauseOf!: string | null;

  /** The printed values that are not on record so any more. */
  @Column('jsonb', { nullable: true })
  changed!: readonly ChangedValue[] | null;
}

/** The code of an issue, kept until its file is made: then the paper alone has it. */
@Entity({ schema: 'work', name: 'certificate_code' })
export class CertificateCodeEntity {
  @PrimaryColumn('uuid', { name: 'certificate_id' })
  certificateId!: string;

  @Column('text')
  code!: string;
}
