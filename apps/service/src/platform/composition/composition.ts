import { Injectable } from '@nestjs/common';
import type { Fact, WrittenRow } from '../facts/fact.js';
import type { GenealogyLock } from './meet-genealogy.js';
import { assertNoCircle } from './assert-no-circle.js';
import { AtOnce } from './at-once.js';
import { composeTanks } from './compose-tanks.js';
import { reachOfCorrections, type Reach } from './reach-of-corrections.js';
import { refreshPlaces } from './refresh-places.js';
import { followStale } from '../recompute/follow-stale.js';
import { markStale } from '../recompute/mark-stale.js';

/** Keeps what is derived from facts in step with them. */
@Injectable()
export class Composition {
  constructor(private readonly atOnce: AtOnce) {}

  /**
   * Follows a fact, in its transaction: composes the tank lots it made, works out the places it used something in, and,
   * for a correction, everything downstream of what it corrected. When that is much, it is marked for a job instead.
   *
   * @param as how it has the genealogy: who is alone needs no locks of single places
   * @returns lots whose making was corrected, to be judged again now; none when the job will
   */
  async follow(fact: Fact, as: GenealogyLock): Promise<readonly string[]> {
    const reach = await this.reachOf(fact);
    await assertNoCircle(fact.tx, reach.lots);
    const now = this.atOnce.holds(reach) ? reach : NOTHING;
    const later = new Set(now === reach ? [] : reach.places);
    const places = fact.wrote('used').map((row) => String(row.values['into_id']));
    await composeTanks(fact.tx, [...newTankLots(fact), ...now.tankLots], fact.id);
    await refreshPlaces(fact.tx, [...places.filter((place) => !later.has(place)), ...now.places], as);
    await followStale(fact);
    if (now !== reach) await markStale(fact, reach);
    return now.lots;
  }

  /** What the corrections of a fact reach: tank lots to compose anew, and places to work out anew. */
  reachOf(fact: Fact): Promise<Reach> {
    const corrections = fact.wrote('correction').flatMap(({ values }) => [values['corrects'], values['replacement']]);
    return reachOfCorrections(
      fact.tx,
      corrections.filter((id) => id !== null),
    );
  }
}

const NOTHING: Reach = { lots: [], tankLots: [], places: [] };

const newTankLots = (fact: Fact): readonly string[] =>
  fact
    .wrote('lot')
    .filter((row: WrittenRow) => row.values['origin'] === 'tank' && row.id === row.values['root'])
    .map((row) => row.id);
