import { Injectable } from '@nestjs/common';
import type { FitItem as Request } from '@hull-record/contracts';
import type { Fact, Found } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { FittedItemEntity } from './fitted-item.entity.js';

/** Records an item that was fitted to a hull. A serial number that is on another hull too is warned of, never refused. */
@Injectable()
export class FitItem {
  constructor(private readonly record: RecordFact) {}

  run(number: string, request: Request): Promise<Receipt<{ serial: string } & Found>> {
    return this.record.run('item fitted', { ...request, number }, async (fact) => {
      const hullId = await findHull(fact.tx, number);
      const { what, serial, maker = null, customerSupplied, note = null } = request;
      await warnOfTwice(fact, what, serial);
      await fact.insert(FittedItemEntity, { hullId, what, serial, maker, customerSupplied, note });
      return { serial, ...fact.found() };
    });
  }
}

const warnOfTwice = async (fact: Fact, what: string, serial: string): Promise<void> => {
  const [other] = await fact.tx.query<{ hull: string }[]>(
    `select n.as_printed as hull from fact.fitted_item i
     join fact.hull_number n on n.hull_id = i.hull_id and n.kind = 'hull number'
     where lower(i.serial) = lower($1) and lower(i.what) = lower($2) and ${standing('i')}
       and not exists (select from fact.item_removed r where r.fitted_item_id = i.root and ${standing('r')}) limit 1`,
    [serial, what],
  );
  if (other) fact.warn(`${what} ${serial} is on hull ${other.hull} too, on record: check the plate.`);
};
