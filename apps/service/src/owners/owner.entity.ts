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

/** Personal data of an owner were set right, or narrowed to what a notice needs: with a commitment to what is kept now. */
@Entity({ schema: 'fact', name: 'owner_changed' })
export class OwnerChangedEntity extends FactRow {
  @Column('uuid', { name: 'owner_id' })
  ownerId!: string;

  @Column('text')
  what!: 'corrected' | 'narrowed';

  @Column('text')
  commitment!: string;

  /** Names of the fields that are not kept any more. */
  @Column('text', { array: true })
  erased!: string[];

  @Column('text')
  reason!: string;
}

/** That an owner asked for something about the own data. */
@Entity({ schema: 'fact', name: 'owner_request' })
export class OwnerRequestEntity extends FactRow {
  @Column('uuid', { name: 'owner_id' })
  ownerId!: string;

  @Column('text')
  asked!: 'access' | 'correction' | 'erasure';

  @Column('date', { name: 'asked_on' })
  askedOn!: string;
}

/** Nothing personal of a hull is erased while it lasts. */
@Entity({ schema: 'fact', name: 'legal_hold' })
export class LegalHoldEntity extends FactRow {
  @Column('uuid', { name: 'hull_id' })
  hullId!: string;

  @Column('text')
  reason!: string;
}

/** A legal hold has ended. */
@Entity({ schema: 'fact', name: 'legal_hold_ended' })
export class LegalHoldEndedEntity extends FactRow {
  @Column('uuid', { name: 'legal_hold_id' })
  legalHoldId!: string;

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
