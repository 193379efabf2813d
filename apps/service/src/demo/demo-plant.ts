import { Injectable, Logger } from '@nestjs/common';
import { HttpAdapterHost, ModuleRef } from '@nestjs/core';
import type { AddressInfo, Server } from 'node:net';
import { asService } from '../platform/access/call.js';
import { DemoProgress } from '../platform/demo-progress.js';
import { ACTS, type Find } from './acts.js';
import { DemoPins } from '../sign-in/demo-pins.js';
import { DemoState } from './demo-state.js';
import { inLanes } from './lanes.js';
import { BAD_LOT, planDemo } from './plan/plan.js';
import type { Step } from './plan/step.js';
import { touchesOf } from './touches-of.js';

/**
 * Loads the demo plant in the background, through the same use cases as everything else: in the order in which it
 * happened, and several facts at once where they have nothing to do with each other.
 *
 * Ids come from the seed, so a load that was interrupted goes on by itself at the next start: what is recorded already
 * answers as before.
 */
@Injectable()
export class DemoPlant {
  private stopped = false;

  constructor(
    private readonly modules: ModuleRef,
    private readonly state: DemoState,
    private readonly progress: DemoProgress,
    private readonly http: HttpAdapterHost,
  ) {}

  /** Never throws: a demo that fails says so in the progress and in the log, and the service goes on. */
  load(say: (line: string) => void): Promise<void> {
    return asService(() => this.loadAll(say));
  }

  private async loadAll(say: (line: string) => void): Promise<void> {
    this.stopped = false;
    try {
      const steps = planDemo();
      const state = await this.state.of(steps);
      if (state === 'to load') await this.record(steps, say);
      if (state !== 'loaded') return;
      await this.givePins(steps);
      this.progress.now = { state, done: steps.length, total: steps.length };
      say(this.firstQuestion());
    } catch (error) {
      this.fail(error);
    }
  }

  /** Ends the load after the fact that is being recorded. */
  stop(): void {
    this.stopped = true;
  }

  private async record(steps: readonly Step[], say: (line: string) => void): Promise<void> {
    const total = steps.length;
    const find: Find = (useCase) => this.modules.get(useCase, { strict: false });
    this.progress.now = { state: 'loading', done: 0, total };
    say('The demo plant is loading in the background.');
    let done = 0;
    await inLanes(this.untilStopped(steps), touchesOf, async (step) => {
      await ACTS[step.act](find, step).catch((cause: unknown) => {
        throw new Error(`${step.name}: ${cause instanceof Error ? cause.message : String(cause)}`, { cause });
      });
      await this.givePins([step]);
      done += 1;
      this.progress.now = { state: 'loading', done, total };
    });
    if (this.stopped) return;
    this.progress.now = { state: 'loaded', done: total, total };
    say(this.firstQuestion());
  }

  /** Everybody of the demo who is registered by now can sign in. */
  private async givePins(steps: readonly Step[]): Promise<void> {
    const badges = steps.flatMap(({ act, body }) => (act === 'registerPerson' ? [String(body['badge'])] : []));
    if (badges.length > 0) await this.modules.get(DemoPins, { strict: false }).give(badges);
  }

  private *untilStopped(steps: readonly Step[]): Generator<Step> {
    for (const step of steps) {
      if (this.stopped) return;
      yield step;
    }
  }

  private firstQuestion(): string {
    return `The demo plant is loaded. Which hulls hold lot ${BAD_LOT}? Try ${this.address()}/#/lots/${BAD_LOT}`;
  }

  private fail(error: unknown): void {
    const detail = error instanceof Error ? error.message : String(error);
    this.progress.now = { ...this.progress.now, state: 'failed', detail };
    new Logger(DemoPlant.name).error(`The demo plant could not be loaded: ${detail}`);
  }

  /** Where the service listens, as one types it; empty while it does not listen. */
  private address(): string {
    const server = this.http.httpAdapter.getHttpServer() as Server;
    const address = server.address() as AddressInfo | null;
    if (address === null) return '';
    return `http://${address.family === 'IPv6' ? 'localhost' : address.address}:${address.port}`;
  }
}
