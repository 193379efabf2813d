import { Injectable } from '@nestjs/common';
import type { Fact, WrittenRow } from '../facts/fact.js';
import { assertNoCircle } from './assert-no-circle.js';
import { composeTanks } from './compose-tanks.js';
import { reachOfCorrections, type Reach } from './reach-of-corrections.js';
import { refreshPlaces } from './refresh-places.js';

/** Keeps what is derived from facts in step with them, in the transaction of each fact. */
@Injectable()
export class Composition {
  /**
   * Follows a fact: composes the tank lots it made, works out the places it used something in, and, for a correction,
   * everything downstream of what it corrected.
   */
  async follow(fact: Fact): Promise<void> {
    const as = fact.wrote('correction').length > 0 ? 'alone' : 'one of many';
    const reach = await this.reachOf(fact);
    await assertNoCircle(fact.tx, reach.lots);
    const places = fact.wrote('used').map((row) => String(row.values['into_id']));
    await composeTanks(fact.tx, [...newTankLots(fact), ...reach.tankLots], fact.id);
    await refreshPlaces(fact.tx, [...places, ...reach.places], as);
  }

  /** What the corrections of a fact reach: tank lots to compose anew, and places to work out anew. */
  reachOf(fact: Fact): Promise<Reach> {
    return reachOfCorrections(fact.tx, fact.wrote('correction'));
  }
}

const newTankLots = (fact: Fact): readonly string[] =>
  fact
    .wrote('lot')
    .filter((row: WrittenRow) => row.values['origin'] === 'tank' && row.id === row.values['root'])
    .map((row) => row.id);
