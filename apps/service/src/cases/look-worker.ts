import { Injectable, Logger as NestLogger, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import { Logger, run, type Runner } from 'graphile-worker';
import pg from 'pg';
import { setTimeout as pause } from 'node:timers/promises';
import { DataSource } from 'typeorm';
import { LOOK } from './look-job.js';
import { RunLook } from './run-look.js';

/** A job that was asked for is told to us at once; this is for what was missed, ms. */
const LOOK_EVERY_MS = 5_000;
/** One that listens, one that works. */
const CONNECTIONS = 2;
/** How long to wait before working again, when the database was not there, ms. */
const AGAIN_AFTER_MS = 5_000;

/** Runs the jobs of looks in this process, from its start to its end. Several services share them. */
@Injectable()
export class LookWorker implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly log = new NestLogger('cases');
  private readonly stop = new AbortController();
  private readonly pool: pg.Pool;
  private runner: Runner | undefined;
  private working: Promise<void> | undefined;

  constructor(
    private readonly db: DataSource,
    private readonly look: RunLook,
  ) {
    const { url } = db.options as { readonly url: string };
    this.pool = new pg.Pool({ connectionString: url, max: CONNECTIONS });
    this.pool.on('error', () => undefined);
    this.pool.on('connect', (client) => client.on('error', () => undefined));
  }

  async onApplicationBootstrap(): Promise<void> {
    this.runner = await this.begin();
    this.working = this.keepWorking();
  }

  async onModuleDestroy(): Promise<void> {
    this.stop.abort();
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
      ...{ pgPool: this.pool, concurrency: 1, noHandleSignals: true, pollInterval: LOOK_EVERY_MS },
      logger: new Logger(() => () => undefined),
      taskList: { [LOOK]: (payload) => this.answer((payload as { lookId: string }).lookId) },
    });
  }

  /** What goes wrong is kept where it can be read, and the job is tried again. */
  private async answer(lookId: string): Promise<void> {
    try {
      await this.look.run(lookId);
    } catch (error) {
      this.log.error(`A look failed and is tried again: ${String(error)}`);
      await this.db.query("update work.case_run set state = 'failed', trouble = $2 where look_id = $1", [
        ...[lookId, String(error)],
      ]);
      throw error;
    }
  }
}
