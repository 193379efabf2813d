import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** How much catalyst a gun adds from a time on. */
@Entity({ schema: 'fact', name: 'gun_setting' })
export class GunSettingEntity extends FactRow {
  @Column('uuid', { name: 'gun_id' })
  gunId!: string;

  /** Per cent of the resin, by mass. */
  @Column('double precision', { name: 'catalyst_percent' })
  catalystPercent!: number;
}
