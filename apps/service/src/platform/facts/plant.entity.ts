import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A plant: each has a journal of its own. */
@Entity({ schema: 'fact', name: 'plant' })
export class PlantEntity {
  @PrimaryColumn('uuid')
  id!: string;

  @Column('text')
  code!: string;

  /** IANA name; papers print its times. */
  @Column('text', { name: 'time_zone' })
  timeZone!: string;
}
