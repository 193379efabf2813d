import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { Jobs } from '../recompute/jobs.js';
import { renewExposure } from './renew-exposure.js';

/** Packs exposure every night, so that marks of what was recorded do not pile up, and the next look finds little to do. */
@Injectable()
export class KeepExposure {
  constructor(db: DataSource, jobs: Jobs) {
    jobs.everyNight('pack exposure', () => renewExposure(db));
  }
}
