import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { Jobs } from '../recompute/jobs.js';
import { renewRoll } from './renew-roll.js';

/** Rolls hulls every night, so that marks of what was recorded do not pile up, and the next look finds little to do. */
@Injectable()
export class KeepRoll {
  constructor(db: DataSource, jobs: Jobs) {
    jobs.everyNight('roll hulls', () => renewRoll(db));
  }
}
