import { Controller, HttpException, HttpStatus } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { routes } from '@hull-record/contracts';
import { DemoProgress } from '../platform/demo-progress.js';
import { Route } from '../platform/http/route.js';

@Controller()
export class HealthController {
  constructor(
    private readonly db: DataSource,
    private readonly demo: DemoProgress,
  ) {}

  @Route(routes.live)
  live() {
    return { live: true };
  }

  /** Ready means that the database answers; the demo may still be loading. */
  @Route(routes.ready)
  async ready() {
    try {
      await this.db.query('select 1');
    } catch {
      throw new HttpException('The database does not answer.', HttpStatus.SERVICE_UNAVAILABLE);
    }
    return { ready: true, demo: this.demo.now };
  }
}
