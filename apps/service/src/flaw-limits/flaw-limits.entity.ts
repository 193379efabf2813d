import { Column, Entity } from 'typeorm';
import type { FlawLevel } from '@hull-record/trade';
import { FactRow } from '../platform/facts/fact-row.js';

/** At which level a plant accepts flaws from a time on, with rows of its own. */
@Entity({ schema: 'fact', name: 'flaw_limits' })
export class FlawLimitsEntity extends FactRow {
  /** null: flaws are not judged by a table. */
  @Column('text', { nullable: true })
  level!: FlawLevel | null;

  @Column('jsonb')
  rows!: readonly object[];

  @Column('text')
  reason!: string;
}
