import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A model, with the skins that its hull maps are drawn from. */
@Entity({ schema: 'fact', name: 'model' })
export class ModelEntity extends FactRow {
  @Column('text')
  code!: string;

  @Column('text')
  name!: string;

  @Column('jsonb')
  skins!: object;

  /** Kinds of part without which a hull is not released. */
  @Column('text', { name: 'required_parts', array: true })
  requiredParts!: string[];
}
