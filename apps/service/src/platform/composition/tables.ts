import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Composition of a tank lot: fraction per source and role; a version is never changed. No source: the remainder. */
@Entity({ schema: 'derived', name: 'lot_composition' })
export class LotCompositionEntity {
  @PrimaryColumn('uuid', { name: 'lot_id' })
  lotId!: string;

  @PrimaryColumn('integer')
  version!: number;

  @Column('uuid', { name: 'source_id', nullable: true })
  sourceId!: string | null;

  @PrimaryColumn('text')
  role!: string;

  @Column('double precision')
  fraction!: number;

  /** The weakest basis on the way from the source to this lot. */
  @Column('text')
  basis!: string;
}

/** Which version of its composition a lot has now, and the journal entry that made it. */
@Entity({ schema: 'derived', name: 'composed_lot' })
export class ComposedLotEntity {
  @PrimaryColumn('uuid', { name: 'lot_id' })
  lotId!: string;

  @Column('integer')
  version!: number;

  @Column('uuid', { name: 'entry_id' })
  entryId!: string;
}

/** Kilograms of a source in a layer, joint or repair. */
@Entity({ schema: 'derived', name: 'place_source' })
export class PlaceSourceEntity {
  @PrimaryColumn('uuid', { name: 'place_id' })
  placeId!: string;

  @Column('uuid', { name: 'part_id' })
  partId!: string;

  @Column('text', { name: 'into_kind' })
  intoKind!: string;

  @PrimaryColumn('text')
  role!: string;

  @Column('uuid', { name: 'source_id', nullable: true })
  sourceId!: string | null;

  @Column('double precision')
  kg!: number;

  @Column('text')
  basis!: string;

  @Column('timestamptz', { name: 'first_at' })
  firstAt!: Date;

  @Column('timestamptz', { name: 'last_at' })
  lastAt!: Date;
}

/** Kilograms of all lots of one role in a layer, joint or repair: what a share is a share of. */
@Entity({ schema: 'derived', name: 'place_role' })
export class PlaceRoleEntity {
  @PrimaryColumn('uuid', { name: 'place_id' })
  placeId!: string;

  @Column('uuid', { name: 'part_id' })
  partId!: string;

  @PrimaryColumn('text')
  role!: string;

  @Column('double precision')
  kg!: number;
}
