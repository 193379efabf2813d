import { Injectable } from '@nestjs/common';
import type { Obstacle, ReleaseHull as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { LifeFactEntity } from '../platform/life/life-fact.entity.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { Conflict } from '../platform/refusals.js';
import { standingPlaces } from '../platform/places/places.js';
import { obstaclesOf } from '../platform/release/obstacles.js';
import type { LifeResult } from './record-life-fact.js';

/**
 * Releases a hull, or says everything that is in the way.
 *
 * It looks while the gate of the plant is closed: no hold, reading or defect slips in between its look and its word.
 */
@Injectable()
export class ReleaseHull {
  constructor(private readonly record: RecordFact) {}

  run(number: string, request: Request): Promise<Receipt<LifeResult>> {
    return this.record.run(
      'hull released',
      { ...request, number },
      async (fact) => {
        const hullId = await findHull(fact.tx, number);
        await assertReleasable(fact, hullId, number);
        await assertNotMaker(fact, hullId);
        const inTheWay = await obstaclesOf(fact.tx, hullId);
        if (inTheWay.length > 0) throw new NotReleasable(number, inTheWay);
        await fact.insert(LifeFactEntity, { hullId, what: 'released', dealerId: null, market: null, note: null });
        return { what: 'released', ...fact.found() };
      },
      { gate: 'closed' },
    );
  }
}

const assertReleasable = async (fact: Fact, hullId: string, number: string): Promise<void> => {
  const [past] = await fact.tx.query<{ what: string }[]>(
    `select f.what from fact.life_fact f where f.hull_id = $1 and f.what in ('released', 'scrapped') and ${standing('f')}
     order by f.what desc limit 1`,
    [hullId],
  );
  if (past) throw new Conflict(`${past.what}-already`, `Hull ${number} is ${past.what} already.`);
};

const MADE = `
  select from fact.joint j
  join lateral (${standingPlaces('p.part_id = j.part_id')}) place on true
  where j.hull_id = $1 and ${standing('j')} and exists (
    select from fact.layer_record r where r.root = place.place_id and $2 = any(r.makers) and ${standing('r')}
    union all select from fact.repair r where r.root = place.place_id and $2 = any(r.makers) and ${standing('r')})`;

/** Who signs did not do it. */
const assertNotMaker = async (fact: Fact, hullId: string): Promise<void> => {
  const made = await fact.tx.query<unknown[]>(MADE, [hullId, fact.author.personId]);
  if (made.length > 0)
    throw new Conflict(
      'releaser-is-maker',
      'Who made part of the hull cannot release it: ask another person.',
      '/enteredBy',
    );
};

class NotReleasable extends Conflict {
  constructor(number: string, inTheWay: readonly Obstacle[]) {
    super('not-releasable', `Hull ${number} cannot be released: ${inTheWay.length} things are in the way.`, undefined, {
      inTheWay,
    });
  }
}
