import { Column, Entity, PrimaryColumn, PrimaryGeneratedColumn } from 'typeorm';

/** A short number of a hull, which tells its block of the roll. */
@Entity({ schema: 'derived', name: 'hull_place' })
export class HullPlaceEntity {
  @PrimaryColumn('uuid', { name: 'hull_id' })
  hullId!: string;

  @Column('integer')
  number!: number;
}

/** Hulls of a plant, many in a row, their columns as lists in the order of their numbers. */
@Entity({ schema: 'derived', name: 'hull_block' })
export class HullBlockEntity {
  @PrimaryColumn('uuid', { name: 'plant_id' })
  plantId!: string;

  @PrimaryColumn('integer')
  block!: number;

  @Column('json')
  hulls!: unknown;
}

/** Says that a hull, or every hull, is not in the roll as it is now. */
@Entity({ schema: 'derived', name: 'stale_hull' })
export class StaleHullEntity {
  @PrimaryGeneratedColumn('identity', { type: 'bigint', generatedIdentity: 'BY DEFAULT' })
  id!: string;

  @Column('uuid', { name: 'hull_id', nullable: true })
  hullId!: string | null;
}
