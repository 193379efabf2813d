import { Column, Entity } from 'typeorm';
import { AmountRow } from '../facts/amount-row.js';

/** A lot: received, or made of other lots. */
@Entity({ schema: 'fact', name: 'lot' })
export class LotEntity extends AmountRow {
  @Column('text')
  code!: string;

  @Column('text')
  origin!: 'received' | 'mixed' | 'tank' | 'cut' | 'unidentified';

  /** Of received lots; a made lot is what it is made of. */
  @Column('uuid', { name: 'material_id', nullable: true })
  materialId!: string | null;

  @Column('text', { nullable: true })
  supplier!: string | null;

  @Column('text', { name: 'supplier_lot', nullable: true })
  supplierLot!: string | null;

  @Column('date', { name: 'made_on', nullable: true })
  madeOn!: string | null;

  /** Last day of use. */
  @Column('date', { name: 'expires_on', nullable: true })
  expiresOn!: string | null;

  @Column('jsonb')
  certificate!: object;

  /** Limits that the certificate names; they stand above those of the data sheet. */
  @Column('jsonb', { nullable: true })
  certified!: object | null;

  @Column('uuid', { name: 'tank_id', nullable: true })
  tankId!: string | null;

  @Column('integer', { name: 'fill_number', nullable: true })
  fillNumber!: number | null;

  /** Of unidentified material alone: what it was taken for. */
  @Column('text', { nullable: true })
  role!: string | null;

  /** Of unidentified material alone: what it looked like. */
  @Column('text', { nullable: true })
  looks!: string | null;

  /** Of unidentified material alone: where it stood. */
  @Column('text', { name: 'found_at', nullable: true })
  foundAt!: string | null;
}

/** A lot whose material is known has none of these. */
export const IDENTIFIED = { role: null, looks: null, foundAt: null } as const;
