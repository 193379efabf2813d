import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Step } from './plan/step.js';

export type Begun = 'not wanted' | 'to load' | 'loaded';

const LOOK = `
  select exists (select from fact.client_id where id = $1) as begun,
    exists (select from fact.client_id where id = $2) as ended,
    (select count(*) from fact.person where root = id) > 1 as others`;

/** Tells from the facts how the demo stands: a plant in which others are registered is not a place for it. */
@Injectable()
export class DemoState {
  constructor(private readonly db: DataSource) {}

  /** @param steps the whole plan; it was begun when the first step is recorded, and ended when the last is */
  async of(steps: readonly Step[]): Promise<Begun> {
    const [row] = await this.db.query<[{ begun: boolean; ended: boolean; others: boolean }]>(LOOK, [
      steps[0]?.body.id,
      steps.at(-1)?.body.id,
    ]);
    if (row.ended) return 'loaded';
    return row.others && !row.begun ? 'not wanted' : 'to load';
  }
}
