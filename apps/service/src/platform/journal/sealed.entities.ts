import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Where an entry of the journal stands in the tree of its plant: given at sealing, in the order of commits. */
@Entity({ schema: 'fact', name: 'sealed_entry' })
export class SealedEntryEntity {
  @PrimaryColumn('uuid', { name: 'entry_id' })
  entryId!: string;

  @Column('uuid', { name: 'plant_id' })
  plantId!: string;

  /** From 0. */
  @Column('bigint')
  index!: string;

  /** The entry's order of insertion, once more. */
  @Column('bigint')
  entered!: string;
}

/** A complete subtree of the tree of a plant, which never changes: what proofs are made of. */
@Entity({ schema: 'fact', name: 'sealed_subtree' })
export class SealedSubtreeEntity {
  @PrimaryColumn('uuid', { name: 'plant_id' })
  plantId!: string;

  @PrimaryColumn('integer')
  level!: number;

  @PrimaryColumn('bigint')
  index!: string;

  @Column('bytea')
  hash!: Buffer;
}

/** A signed head of the tree of a plant, as the line that people keep. */
@Entity({ schema: 'fact', name: 'tree_head' })
export class TreeHeadEntity {
  @PrimaryColumn('uuid', { name: 'plant_id' })
  plantId!: string;

  /** Counts from 1 in each plant. */
  @PrimaryColumn('integer')
  number!: number;

  @Column('bigint')
  size!: string;

  @Column('timestamptz', { name: 'signed_at' })
  signedAt!: Date;

  @Column('text')
  line!: string;
}

/** How far the journal of a plant is sealed, by the transaction ids of the server that gave them. */
@Entity({ schema: 'work', name: 'seal_state' })
export class SealStateEntity {
  @PrimaryColumn('uuid', { name: 'plant_id' })
  plantId!: string;

  /** System identifier of the server, to tell it from one that the data were restored to. */
  @Column('text')
  server!: string;

  /** All entries of transactions below this are sealed. */
  @Column('text', { name: 'sealed_below' })
  sealedBelow!: string;
}

/** The newest head of a plant that was sent on one of the ways, and what went wrong since. */
@Entity({ schema: 'work', name: 'head_sent' })
export class HeadSentEntity {
  @PrimaryColumn('uuid', { name: 'plant_id' })
  plantId!: string;

  @PrimaryColumn('text')
  way!: string;

  @Column('integer')
  number!: number;

  @Column('timestamptz', { name: 'tried_at' })
  triedAt!: Date;

  @Column('text', { nullable: true })
  trouble!: string | null;
}
