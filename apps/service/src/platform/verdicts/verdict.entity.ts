import { Column, Entity } from 'typeorm';
import { AboutRow } from '../facts/about-row.js';

/**
 * What was found when something made was judged by a rule of the trade, with the figures and limits of then: a limit
 * that changes later changes no verdict. When the facts are corrected the verdict is corrected too.
 */
@Entity({ schema: 'fact', name: 'verdict' })
export class VerdictEntity extends AboutRow {
  /** What was judged, such as "lay-up window"; one verdict on each topic stands of one thing. */
  @Column('text')
  topic!: string;

  @Column('text')
  verdict!: 'inside' | 'outside' | 'cannot be judged';

  @Column('text')
  detail!: string;

  @Column('jsonb')
  figures!: Readonly<Record<string, number | string | null>>;

  @Column('text')
  rule!: string;

  @Column('text')
  source!: string;
}
