import { Column, Entity, PrimaryColumn, PrimaryGeneratedColumn } from 'typeorm';

/** A short number of a part, to be packed. */
@Entity({ schema: 'derived', name: 'part_number' })
export class PartNumberEntity {
  @PrimaryColumn('uuid', { name: 'part_id' })
  partId!: string;

  @Column('integer')
  number!: number;
}

/**
 * A source in one kind of layer: numbers of parts, the day it was first put into each, its share of like material there.
 *
 * Packed in the order of parts, each as a step from the one before and the first from 0: a byte, or `LONG_STEP` and then four,
 * the highest first. One share alone stands for all.
 */
@Entity({ schema: 'derived', name: 'exposure' })
export class ExposureEntity {
  @PrimaryColumn('uuid', { name: 'source_id' })
  sourceId!: string;

  @PrimaryColumn('text')
  role!: string;

  @PrimaryColumn('text')
  kind!: string;

  @PrimaryColumn('text', { name: 'into_what' })
  intoWhat!: string;

  @Column('bytea')
  parts!: Buffer;

  @Column('bytea')
  days!: Buffer;

  @Column('integer', { name: 'last_day' })
  lastDay!: number;

  @Column('bytea')
  shares!: Buffer;
}

/** Says that the exposure of a source, or of all, is not what is in places now. */
@Entity({ schema: 'derived', name: 'stale_exposure' })
export class StaleExposureEntity {
  @PrimaryGeneratedColumn('identity', { type: 'bigint', generatedIdentity: 'BY DEFAULT' })
  id!: string;

  @Column('uuid', { name: 'source_id', nullable: true })
  sourceId!: string | null;
}
