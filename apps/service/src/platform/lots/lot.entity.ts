import { Column, Entity } from 'typeorm';
import { AmountRow } from '../facts/amount-row.js';

/** A lot: received, or made of other lots. */
@Entity({ schema: 'fact', name: 'lot' })
export class LotEntity extends AmountRow {
  @Column('text')
  code!: string;

  @Column('text')
  origin!: 'received' | 'mixed' | 'tank' | 'cut';

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

  @Column('uuid', { name: 'tank_id', nullable: true })
  tankId!: string | null;

  @Column('integer', { name: 'fill_number', nullable: true })
  fillNumber!: number | null;
}
