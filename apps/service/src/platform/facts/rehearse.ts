import { Injectable } from '@nestjs/common';
import type { Envelope, Stops } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { judgeMade } from '../rules/judge-made.js';
import { remedyOf, whoLifts } from '../release/who-lifts.js';
import { findAuthor } from './author.js';
import { Fact } from './fact.js';

/** Carries what was found out of a transaction that is rolled back. */
class Rehearsed extends Error {
  constructor(readonly stops: Stops) {
    super('rehearsed');
  }
}

/**
 * Says before an act what recording it would find wrong: it records it, and rolls back. A check and a record can
 * therefore never disagree.
 */
@Injectable()
export class Rehearse {
  constructor(private readonly db: DataSource) {}

  async run(body: Envelope, decide: (fact: Fact) => Promise<unknown>): Promise<Stops> {
    try {
      return await this.db.transaction(async (tx) => {
        const author = await findAuthor(tx, body);
        const fact = new Fact(tx, body.id.toLowerCase(), author, new Date(body.happenedAt), new Date());
        await decide(fact);
        await judgeMade(fact);
        throw new Rehearsed(toStops(fact));
      });
    } catch (error) {
      if (error instanceof Rehearsed) return error.stops;
      throw error;
    }
  }
}

const toStops = ({ nonconformities, warnings }: Fact): Stops => ({
  stops: nonconformities.map(({ rule, detail }) => ({ rule, detail, remedy: remedyOf(rule), goesOn: whoLifts(rule) })),
  warnings: [...warnings],
});
