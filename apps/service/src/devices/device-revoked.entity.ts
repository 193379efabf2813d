import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** The credential of a device was taken from it. */
@Entity({ schema: 'fact', name: 'device_revoked' })
export class DeviceRevokedEntity extends FactRow {
  @Column('uuid', { name: 'device_id' })
  deviceId!: string;

  @Column('text')
  reason!: string;
}
