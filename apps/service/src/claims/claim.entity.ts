import { Column, Entity } from 'typeorm';
import type { ClaimTerm, MoistureSurvey } from '@hull-record/contracts';
import { FactRow } from '../platform/facts/fact-row.js';
import { PhotoRow } from '../platform/photos/photo-row.js';

/** What was reported of a hull. Its mark on the hull is C and its number. */
@Entity({ schema: 'fact', name: 'claim' })
export class ClaimEntity extends FactRow {
  @Column('uuid', { name: 'hull_id' })
  hullId!: string;

  @Column('integer')
  number!: number;

  @Column('text')
  kind!: string;

  @Column('text', { nullable: true })
  reference!: string | null;

  @Column('uuid', { name: 'dealer_id', nullable: true })
  dealerId!: string | null;

  @Column('date', { name: 'reported_on' })
  reportedOn!: string;

  @Column('date', { name: 'noticed_on', nullable: true })
  noticedOn!: string | null;

  @Column('text')
  symptoms!: string;

  @Column('text', { nullable: true })
  grade!: string | null;

  @Column('text', { nullable: true })
  looks!: 'round' | 'irregular' | null;

  @Column('double precision', { name: 'hours_ashore', nullable: true })
  hoursAshore!: number | null;

  /** As the meter showed it; no figure is per cent of water. */
  @Column('jsonb', { nullable: true })
  moisture!: MoistureSurvey | null;

  /** What spoke against the survey when it was filed. */
  @Column('text', { array: true })
  says!: string[];

  @Column('text', { name: 'found_by' })
  foundBy!: string;
}

/** A photo of a claim, and what it shows. */
@Entity({ schema: 'fact', name: 'claim_photo' })
export class ClaimPhotoEntity extends PhotoRow {
  @Column('uuid', { name: 'claim_id' })
  claimId!: string;

  @Column('text')
  shows!: string;
}

/** What a person decided on a claim, with what the terms said then. */
@Entity({ schema: 'fact', name: 'claim_decision' })
export class ClaimDecisionEntity extends FactRow {
  @Column('uuid', { name: 'claim_id' })
  claimId!: string;

  @Column('text')
  decision!: string;

  @Column('text')
  reason!: string;

  @Column('double precision', { name: 'paid_percent', nullable: true })
  paidPercent!: number | null;

  @Column('double precision', { nullable: true })
  hours!: number | null;

  @Column('text', { name: 'cost_amount', nullable: true })
  costAmount!: string | null;

  @Column('text', { name: 'cost_currency', nullable: true })
  costCurrency!: string | null;

  @Column('jsonb')
  term!: ClaimTerm;
}

/** How a claim came to light, as was known later. */
@Entity({ schema: 'fact', name: 'claim_mark' })
export class ClaimMarkEntity extends FactRow {
  @Column('uuid', { name: 'claim_id' })
  claimId!: string;

  @Column('text', { name: 'found_by' })
  foundBy!: string;

  @Column('text')
  reason!: string;
}
