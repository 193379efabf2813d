import { Column, Entity } from 'typeorm';
import type { WarrantyCover, WarrantyStart, WarrantyTerms } from '@hull-record/trade';
import { FactRow } from '../platform/facts/fact-row.js';

/** A version of the warranty terms of a model, for model years from one to another. */
@Entity({ schema: 'fact', name: 'warranty_terms' })
export class WarrantyTermsEntity extends FactRow {
  @Column('uuid', { name: 'model_id' })
  modelId!: string;

  @Column('integer')
  version!: number;

  @Column('integer', { name: 'from_model_year' })
  fromModelYear!: number;

  @Column('integer', { name: 'to_model_year' })
  toModelYear!: number;

  @Column('text', { array: true })
  starts!: WarrantyStart[];

  @Column('jsonb')
  covers!: readonly WarrantyCover[];

  @Column('jsonb')
  transfer!: WarrantyTerms['transfer'];

  @Column('text', { array: true })
  exclusions!: string[];

  @Column('text')
  reason!: string;
}
