import { Column, Entity, PrimaryColumn } from 'typeorm';

/** One journal entry. Its transaction id (xid8) is filled in by the database, which TypeORM cannot express. */
@Entity({ schema: 'fact', name: 'journal' })
export class JournalEntity {
  @PrimaryColumn('uuid')
  id!: string;

  /** Order of insertion on this database; not the order of commits. */
  @Column({ type: 'bigint', generated: 'identity', generatedIdentity: 'ALWAYS' })
  position!: string;

  @Column('uuid', { name: 'plant_id' })
  plantId!: string;

  @Column('smallint')
  format!: number;

  @Column('text')
  kind!: string;

  @Column('uuid', { name: 'person_id' })
  personId!: string;

  @Column('uuid', { name: 'device_id' })
  deviceId!: string;

  @Column('text')
  identity!: string;

  @Column('timestamptz', { name: 'happened_at' })
  happenedAt!: Date;

  @Column('timestamptz', { name: 'recorded_at' })
  recordedAt!: Date;

  /** Names of the rows it covers, as table/id. */
  @Column('text', { array: true })
  covers!: string[];

  /** Canonical JSON (RFC 8785). */
  @Column('text')
  entry!: string;
}
