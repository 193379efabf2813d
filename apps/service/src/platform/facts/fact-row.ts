import { Column, PrimaryColumn } from 'typeorm';

/** What every fact row has. `root` is the id of its first version: other rows refer to that. */
export abstract class FactRow {
  @PrimaryColumn('uuid')
  id!: string;

  @Column('uuid')
  root!: string;

  @Column('uuid', { name: 'plant_id' })
  plantId!: string;

  @Column('uuid', { name: 'entry_id' })
  entryId!: string;

  @Column('timestamptz', { name: 'happened_at' })
  happenedAt!: Date;

  @Column('timestamptz', { name: 'recorded_at' })
  recordedAt!: Date;
}

/** The columns that the fact path fills in. */
export type FilledIn = keyof FactRow;
