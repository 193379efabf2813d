import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Personal data of a person. It may be changed and deleted; the record holds a salted commitment alone. */
@Entity({ schema: 'work', name: 'person_detail' })
export class PersonDetailEntity {
  @PrimaryColumn('uuid', { name: 'person_id' })
  personId!: string;

  @Column('text')
  name!: string;

  @Column('text')
  salt!: string;
}
