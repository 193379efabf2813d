import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { Jobs } from '../platform/recompute/jobs.js';
import { LOOK } from './look-job.js';
import { RunLook } from './run-look.js';

/** Answers looks as a job. What goes wrong is kept where it can be read, and the job is tried again. */
@Injectable()
export class AnswerLooks {
  constructor(
    private readonly db: DataSource,
    private readonly look: RunLook,
    jobs: Jobs,
  ) {
    jobs.of(LOOK, ({ lookId }) => this.answer(String(lookId)));
  }

  private async answer(lookId: string): Promise<void> {
    try {
      await this.look.run(lookId);
    } catch (error) {
      await this.db.query("update work.case_run set state = 'failed', trouble = $2 where look_id = $1", [
        ...[lookId, String(error)],
      ]);
      throw error;
    }
  }
}
