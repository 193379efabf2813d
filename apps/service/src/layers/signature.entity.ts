import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A hold point signed. The makers travel with the key, so that the database sees that another person signed. */
@Entity({ schema: 'fact', name: 'signature' })
export class SignatureEntity extends FactRow {
  /** The version of the record that was signed. */
  @Column('uuid', { name: 'layer_record_id' })
  layerRecordId!: string;

  @Column('uuid', { array: true })
  makers!: string[];

  @Column('uuid', { name: 'signed_by' })
  signedBy!: string;

  @Column('integer')
  turn!: number;
}
