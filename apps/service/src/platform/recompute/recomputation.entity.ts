import { Column, Entity, PrimaryColumn } from 'typeorm';

/** What a correction reached and what is worked out anew by a job, under the id of the correction's journal entry. */
@Entity({ schema: 'work', name: 'recomputation' })
export class RecomputationEntity {
  @PrimaryColumn('uuid')
  id!: string;

  @Column('uuid', { name: 'plant_id' })
  plantId!: string;

  @Column('timestamptz', { name: 'asked_at' })
  askedAt!: Date;

  @Column('timestamptz', { name: 'finished_at', nullable: true })
  finishedAt!: Date | null;

  @Column('integer', { name: 'tank_lots' })
  tankLots!: number;

  @Column('integer')
  places!: number;

  @Column('integer', { nullable: true })
  nonconformities!: number | null;

  /** What went wrong at the last try; tried again by itself. */
  @Column('text', { nullable: true })
  trouble!: string | null;
}

/** A lot downstream of a correction. Its composition is out of date until it is done. */
@Entity({ schema: 'work', name: 'stale_lot' })
export class StaleLotEntity {
  @PrimaryColumn('uuid', { name: 'recomputation_id' })
  recomputationId!: string;

  @PrimaryColumn('uuid', { name: 'lot_id' })
  lotId!: string;

  @Column('boolean')
  tank!: boolean;

  @Column('boolean')
  done!: boolean;
}

/** A layer, joint, repair or touch-up downstream of a correction, of each part that it is or was of. */
@Entity({ schema: 'work', name: 'stale_place' })
export class StalePlaceEntity {
  @PrimaryColumn('uuid', { name: 'recomputation_id' })
  recomputationId!: string;

  @PrimaryColumn('uuid', { name: 'place_id' })
  placeId!: string;

  @PrimaryColumn('uuid', { name: 'part_id' })
  partId!: string;

  @Column('boolean')
  done!: boolean;
}
