import { Injectable } from '@nestjs/common';
import { normaliseNumber } from '@hull-record/trade';
import { DataSource } from 'typeorm';
import { personNow } from '../platform/access/call.js';
import { standing } from '../platform/facts/standing.js';
import { lastDealerOf } from '../platform/life/own-hull.sql.js';
import { NotThere } from '../platform/refusals.js';
import { type BuildRecordPaper, DrawBuildRecord } from './build-record.query.js';

const IS_OWN = `
  select from fact.hull h join fact.hull_number k on k.hull_id = h.id
  where k.normalised = $1 and ${standing('h')} and ${lastDealerOf('h.id')} = $2`;

/** Draws the build record of a hull in the dealer's cut, for the dealer who has it or had it last. */
@Injectable()
export class DrawOwnRecord {
  constructor(
    private readonly db: DataSource,
    private readonly draw: DrawBuildRecord,
  ) {}

  /** @throws NotThere when there is no such hull, or it is not one of this dealer */
  async run(number: string, asOf?: string): Promise<BuildRecordPaper> {
    const own = await this.db.query<unknown[]>(IS_OWN, [normaliseNumber(number), personNow().dealerId]);
    if (own.length === 0) throw new NotThere('hull', number);
    return this.draw.run(number, { cut: 'dealer', ...(asOf === undefined ? {} : { asOf }) });
  }
}
