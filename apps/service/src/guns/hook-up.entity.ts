import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** What feeds a gun from a time on, until the next hook-up of that feed: a lot, a tank, or nothing. */
@Entity({ schema: 'fact', name: 'hook_up' })
export class HookUpEntity extends FactRow {
  @Column('uuid', { name: 'gun_id' })
  gunId!: string;

  @Column('text')
  feed!: 'resin' | 'catalyst' | 'glass';

  @Column('uuid', { name: 'lot_id', nullable: true })
  lotId!: string | null;

  @Column('uuid', { name: 'tank_id', nullable: true })
  tankId!: string | null;
}
