import { Column } from 'typeorm';
import { AmountRow } from '../facts/amount-row.js';

/** What feeds a gun. */
export type Feed = 'resin' | 'catalyst' | 'glass';

/** From what a lot was drawn, when something that holds lots was named rather than the lot itself. */
export interface DrawnFrom {
  /** Set when a tank was named, or fed the gun: the lot is what was in it then. */
  readonly tankId: string | null;
  /** Set when a gun was named: the lot is what fed it then. */
  readonly gunId: string | null;
  readonly feed: Feed | null;
  /** Set when a container was named: the lot is the one it is of. */
  readonly containerId: string | null;
}

/** Nothing was named but the lot. */
export const FROM_THE_LOT: DrawnFrom = { tankId: null, gunId: null, feed: null, containerId: null };

/** What a gun sprayed as one, resin and catalyst: which spray a part of it is of, and how much both were, in its unit. */
export interface PartOfSpray {
  readonly sprayId: string | null;
  readonly sprayed: string | null;
}

/** Drawn by itself. */
export const NOT_SPRAYED: PartOfSpray = { sprayId: null, sprayed: null };

/** A fact that an amount was drawn: used, or put into another lot. */
export abstract class DrawnRow extends AmountRow implements DrawnFrom, PartOfSpray {
  @Column('uuid', { name: 'tank_id', nullable: true })
  tankId!: string | null;

  @Column('uuid', { name: 'gun_id', nullable: true })
  gunId!: string | null;

  @Column('text', { nullable: true })
  feed!: Feed | null;

  @Column('uuid', { name: 'container_id', nullable: true })
  containerId!: string | null;

  @Column('uuid', { name: 'spray_id', nullable: true })
  sprayId!: string | null;

  @Column('numeric', { nullable: true })
  sprayed!: string | null;
}
