import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** What is thought to be behind a defect of cure: a lot (a bucket), a gun, or why neither can be named. */
@Entity({ schema: 'fact', name: 'ask_answer' })
export class AskAnswerEntity extends FactRow {
  @Column('uuid', { name: 'defect_id' })
  defectId!: string;

  @Column('uuid', { name: 'lot_id', nullable: true })
  lotId!: string | null;

  @Column('uuid', { name: 'gun_id', nullable: true })
  gunId!: string | null;

  @Column('text', { nullable: true })
  note!: string | null;
}
