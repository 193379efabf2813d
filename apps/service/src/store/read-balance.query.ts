import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { LotBalance } from '@hull-record/contracts';
import { readAsOne } from '../platform/database/read-as-one.js';
import { loadBalance } from '../platform/store/load-balance.js';

/** Accounts for every kilogram of a lot, line by line. */
@Injectable()
export class ReadBalance {
  constructor(private readonly db: DataSource) {}

  run(lot: string): Promise<LotBalance> {
    return readAsOne(this.db, (tx) => loadBalance(tx, lot));
  }
}
