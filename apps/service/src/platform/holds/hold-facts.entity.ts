import { Column, Entity } from 'typeorm';
import type { HullDisposition, HullState } from '@hull-record/trade';
import { FactRow } from '../facts/fact-row.js';

/** How far a hold reaches, from its first turn on; the newest turn that stands counts. */
@Entity({ schema: 'fact', name: 'hold_scope' })
export class HoldScopeEntity extends FactRow {
  @Column('uuid', { name: 'hold_id' })
  holdId!: string;

  @Column('integer')
  turn!: number;

  @Column('double precision', { name: 'min_share' })
  minShare!: number;

  @Column('text', { nullable: true })
  zone!: string | null;

  @Column('timestamptz', { name: 'made_from', nullable: true })
  madeFrom!: Date | null;

  @Column('timestamptz', { name: 'made_until', nullable: true })
  madeUntil!: Date | null;

  @Column('text', { nullable: true })
  reason!: string | null;
}

/** What of a hull, or of a part that is in none, a fact of a hold is about. */
abstract class OfHeldHull extends FactRow {
  @Column('uuid', { name: 'hold_id' })
  holdId!: string;

  @Column('uuid', { name: 'hull_id', nullable: true })
  hullId!: string | null;

  @Column('uuid', { name: 'part_id', nullable: true })
  partId!: string | null;
}

/** A hull that a hold reached when it was placed, as it was known then. */
@Entity({ schema: 'fact', name: 'hold_reached' })
export class HoldReachedEntity extends OfHeldHull {
  @Column('double precision', { nullable: true })
  kg!: number | null;

  @Column('double precision', { nullable: true })
  share!: number | null;

  @Column('boolean')
  possibly!: boolean;

  @Column('text')
  state!: HullState;
}

/** What was found or done of a hull that a hold reaches. */
@Entity({ schema: 'fact', name: 'hold_disposition' })
export class HoldDispositionEntity extends OfHeldHull {
  @Column('text')
  what!: HullDisposition;

  /** Who looked or worked, which may be others than who enters it. */
  @Column('uuid', { array: true })
  makers!: string[];

  @Column('text', { nullable: true })
  note!: string | null;

  @Column('text', { nullable: true })
  evidence!: string | null;
}
