import { Column, Entity, PrimaryColumn } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** That a hull has an owner, with a salted commitment to who it is. */
@Entity({ schema: 'fact', name: 'owner' })
export class OwnerEntity extends FactRow {
  @Column('uuid', { name: 'hull_id' })
  hullId!: string;

  @Column('text')
  what!: 'first purchaser' | 'later owner';

  @Column('text')
  commitment!: string;
}

/** An owner's personal data were erased. */
@Entity({ schema: 'fact', name: 'owner_erased' })
export class OwnerErasedEntity extends FactRow {
  @Column('uuid', { name: 'owner_id' })
  ownerId!: string;

  @Column('text')
  reason!: string;
}

/** Personal data of an owner. It may be changed and deleted; the record holds a salted commitment alone. */
@Entity({ schema: 'work', name: 'owner_detail' })
export class OwnerDetailEntity {
  @PrimaryColumn('uuid', { name: 'owner_id' })
  ownerId!: string;

  @Column('jsonb')
  detail!: object;

  @Column('text')
  salt!: string;
}
