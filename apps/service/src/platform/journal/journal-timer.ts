import { Injectable, Logger } from '@nestjs/common';
import { setTimeout as pause } from 'node:timers/promises';
import { SealJournal } from './seal-journal.js';
import { SendHeads } from './send-heads.js';
import { SignHead } from './sign-head.js';

/** How often new entries are sealed, ms. */
const SEAL_EVERY_MS = 5_000;
const MINUTE_MS = 60_000;

/** Seals what was recorded, signs heads and sends them, from the start of the service to its end. */
@Injectable()
export class JournalTimer {
  private readonly log = new Logger('journal');
  private readonly stop = new AbortController();
  private headDue = 0;

  constructor(
    private readonly seal: SealJournal,
    private readonly sign: SignHead,
    private readonly send: SendHeads,
  ) {}

  /** Begins; what it gives back ends it after the round it is in. */
  begin(headsEveryMinutes: number): () => Promise<void> {
    const rounds = this.keepOn(headsEveryMinutes * MINUTE_MS);
    return () => {
      this.stop.abort();
      return rounds;
    };
  }

  private async keepOn(headEveryMs: number): Promise<void> {
    while (!this.stop.signal.aborted) {
      await this.round(headEveryMs).catch((error: unknown) =>
        this.log.error(`The journal could not be sealed or sent, and is tried again: ${String(error)}`),
      );
      await pause(SEAL_EVERY_MS, undefined, { signal: this.stop.signal }).catch(() => undefined);
    }
  }

  private async round(headEveryMs: number): Promise<void> {
    await this.seal.all();
    if (performance.now() >= this.headDue) {
      await this.sign.all();
      this.headDue = performance.now() + headEveryMs;
    }
    await this.send.run();
  }
}
