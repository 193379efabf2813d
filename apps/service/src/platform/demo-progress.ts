import { Injectable } from '@nestjs/common';

export interface Progress {
  readonly state: 'off' | 'loading' | 'loaded' | 'failed';
  readonly done: number;
  readonly total: number;
  readonly detail?: string;
}

/** How far the demo plant is. */
@Injectable()
export class DemoProgress {
  now: Progress = { state: 'off', done: 0, total: 0 };
}
