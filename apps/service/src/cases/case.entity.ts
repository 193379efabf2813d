import type { CaseAnswer } from '@hull-record/contracts';
import { Column, Entity, PrimaryColumn } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';
import type { CaseSettings } from './settings.js';

/** An inquiry into what claimed hulls have in common. */
@Entity({ schema: 'fact', name: 'case_file' })
export class CaseFileEntity extends FactRow {
  @Column('text')
  code!: string;

  @Column('text')
  title!: string;

  @Column('boolean', { name: 'under_counsel' })
  underCounsel!: boolean;

  @Column('uuid', { array: true })
  readers!: string[];
}

/** How a case is judged from a time on, under the hash of its canonical JSON. */
@Entity({ schema: 'fact', name: 'case_settings' })
export class CaseSettingsEntity extends FactRow {
  @Column('uuid', { name: 'case_id' })
  caseId!: string;

  @Column('integer')
  version!: number;

  @Column('jsonb')
  settings!: CaseSettings;

  @Column('text')
  sha256!: string;

  @Column('text')
  reason!: string;
}

/** A look at a case by frozen settings; every one is kept and counted. */
@Entity({ schema: 'fact', name: 'case_look' })
export class CaseLookEntity extends FactRow {
  @Column('uuid', { name: 'case_id' })
  caseId!: string;

  @Column('uuid', { name: 'settings_id' })
  settingsId!: string;

  @Column('integer')
  number!: number;
}

/** What a look found, from inputs that are kept under their hash. */
@Entity({ schema: 'fact', name: 'case_answer' })
export class CaseAnswerEntity extends FactRow {
  @Column('uuid', { name: 'look_id' })
  lookId!: string;

  @Column('text', { name: 'inputs_sha256' })
  inputsSha256!: string;

  @Column('text', { name: 'answer_sha256' })
  answerSha256!: string;

  @Column('text')
  verdict!: string;

  @Column('boolean')
  exploratory!: boolean;

  @Column('jsonb')
  answer!: CaseAnswer;
}

/** How far the job of a look is. */
@Entity({ schema: 'work', name: 'case_run' })
export class CaseRunEntity {
  @PrimaryColumn('uuid', { name: 'look_id' })
  lookId!: string;

  @Column('uuid', { name: 'plant_id' })
  plantId!: string;

  @Column('text')
  state!: string;

  @Column('text', { nullable: true })
  step!: string | null;

  @Column('integer')
  done!: number;

  @Column('integer')
  total!: number;

  @Column('text', { nullable: true })
  trouble!: string | null;
}
