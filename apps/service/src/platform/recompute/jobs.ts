import { Injectable } from '@nestjs/common';

/** Does what was asked for in the queue of the database; done again after it was ended on its way, or failed. */
export type Job = (payload: Readonly<Record<string, unknown>>) => Promise<void>;

/** Who does which job: each feature puts itself on this list, so that the queue knows no feature. */
@Injectable()
export class Jobs {
  private readonly known = new Map<string, Job>();
  readonly nightly: string[] = [];

  /** Puts a job on the list; to be called before the service is up. */
  of(name: string, job: Job): void {
    this.known.set(name, job);
  }

  /** Puts a job on the list that is done once a night without being asked for. */
  everyNight(name: string, job: Job): void {
    this.of(name, job);
    this.nightly.push(name);
  }

  all(): readonly (readonly [string, Job])[] {
    return [...this.known];
  }
}
