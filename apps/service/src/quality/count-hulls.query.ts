import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { HullsByState } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { whereabouts } from '../platform/life/whereabouts.js';

/** How many hulls are where, by their newest life fact; the most first. */
@Injectable()
export class CountHulls {
  constructor(private readonly db: DataSource) {}

  run(): Promise<HullsByState> {
    return this.db.query(`
      select what, count(*)::int as hulls
      from (select ${whereabouts('h.id')} ->> 'what' as what from fact.hull h where ${standing('h')}) hull
      group by what order by hulls desc, what`);
  }
}
