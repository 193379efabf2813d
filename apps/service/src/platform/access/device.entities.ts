import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A one-time code with which a browser becomes a device. */
@Entity({ schema: 'work', name: 'enrolment_code' })
export class EnrolmentCodeEntity {
  @PrimaryColumn('bytea')
  digest!: Buffer;

  @Column('uuid', { name: 'device_id' })
  deviceId!: string;

  @Column('timestamptz')
  until!: Date;
}

/** The credential of an enrolled browser, as a digest. */
@Entity({ schema: 'work', name: 'device_credential' })
export class DeviceCredentialEntity {
  @PrimaryColumn('bytea')
  digest!: Buffer;

  @Column('uuid', { name: 'device_id' })
  deviceId!: string;

  @Column('timestamptz', { name: 'enrolled_at' })
  enrolledAt!: Date;

  @Column('timestamptz', { name: 'revoked_at', nullable: true })
  revokedAt!: Date | null;
}

/** What a revoked device sent, as it came. */
@Entity({ schema: 'work', name: 'kept_entry' })
export class KeptEntryEntity {
  @PrimaryColumn('uuid')
  id!: string;

  @Column('uuid', { name: 'device_id' })
  deviceId!: string;

  @Column('timestamptz', { name: 'received_at' })
  receivedAt!: Date;

  @Column('text')
  path!: string;

  @Column('text')
  media!: string;

  @Column('bytea')
  body!: Buffer;

  @Column('bytea')
  digest!: Buffer;
}
