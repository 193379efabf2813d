import { Injectable, Logger as NestLogger, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import { Logger, parseCronItems, run, type Runner } from 'graphile-worker';
import pg from 'pg';
import { setTimeout as pause } from 'node:timers/promises';
import { DataSource } from 'typeorm';
import { askForJob, RECOMPUTE } from './job.js';
import { type Job, Jobs } from './jobs.js';
import { RecomputePlant } from './recompute-plant.js';

/** A job that was asked for is told to us at once; this is for what was missed, ms. */
const LOOK_EVERY_MS = 5_000;
/** When what is done every night is done, UTC. */
const NIGHTLY = '30 6 * * *';
/** So many jobs at once: one that is long does not hold up those of another kind. */
const AT_ONCE = 3;
/** One that listens, one for each that works, one to spare. */
const CONNECTIONS = AT_ONCE + 2;
/** How long to wait before working again, when the database was not there, ms. */
const AGAIN_AFTER_MS = 5_000;

/** Runs the jobs of the database in this process, from its start to its end. Several services share the jobs. */
@Injectable()
export class RecomputeWorker implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly log = new NestLogger('recompute');
  private readonly stop = new AbortController();
  private readonly pool: pg.Pool;
  private runner: Runner | undefined;
  private working: Promise<void> | undefined;

  constructor(
    private readonly db: DataSource,
    private readonly plant: RecomputePlant,
    private readonly jobs: Jobs,
  ) {
    const { url } = db.options as { readonly url: string };
    this.pool = new pg.Pool({ connectionString: url, max: CONNECTIONS });
    // A connection that is lost is made anew; what was asked on it fails, and is tried again.
    this.pool.on('error', () => undefined);
    this.pool.on('connect', (client) => client.on('error', () => undefined));
  }

  /** Goes on with what an earlier process did not finish, whatever became of its job. */
  async onApplicationBootstrap(): Promise<void> {
    const plants = await this.db.query<{ id: string }[]>(
      'select distinct plant_id as id from work.recomputation where finished_at is null',
    );
    for (const { id } of plants) await askForJob(this.db.manager, id);
    this.runner = await this.begin();
    this.working = this.keepWorking();
  }

  async onModuleDestroy(): Promise<void> {
    this.stop.abort(new Error('The service stops; it goes on when it is started again.'));
    await this.runner?.stop().catch(() => undefined);
    await this.working;
    await this.pool.end();
  }

  private async keepWorking(): Promise<void> {
    while (!this.stop.signal.aborted) {
      try {
        this.runner ??= await this.begin();
        await this.runner.promise;
      } catch (error) {
        this.log.warn(`Jobs do not run: ${String(error)}`);
      }
      this.runner = undefined;
      await pause(AGAIN_AFTER_MS, undefined, { signal: this.stop.signal }).catch(() => undefined);
    }
  }

  private begin(): Promise<Runner> {
    return run({
      pgPool: this.pool,
      concurrency: AT_ONCE,
      noHandleSignals: true,
      pollInterval: LOOK_EVERY_MS,
      parsedCronItems: parseCronItems(this.jobs.nightly.map((task) => ({ task, match: NIGHTLY, identifier: task }))),
      logger: new Logger(() => () => undefined),
      taskList: {
        [RECOMPUTE]: (payload) => this.recompute((payload as { plantId: string }).plantId),
        ...Object.fromEntries(this.jobs.all().map(([name, job]) => [name, this.told(name, job)])),
      },
    });
  }

  /** Says what goes wrong; the job is tried again. */
  private told(name: string, job: Job): (payload: unknown) => Promise<void> {
    return async (payload) => {
      try {
        await job(payload as Parameters<Job>[0]);
      } catch (error) {
        this.log.error(`The job "${name}" failed and is tried again: ${String(error)}`);
        throw error;
      }
    };
  }

  /** What goes wrong is kept where it can be read, and the job is tried again. */
  private async recompute(plantId: string): Promise<void> {
    try {
      await this.plant.run(plantId, this.stop.signal);
    } catch (error) {
      if (!this.stop.signal.aborted) {
        this.log.error(`Recomputing failed and is tried again: ${String(error)}`);
        await this.db.query('update work.recomputation set trouble = $2 where plant_id = $1 and finished_at is null', [
          plantId,
          String(error),
        ]);
      }
      throw error;
    }
  }
}
