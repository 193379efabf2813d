import { Injectable } from '@nestjs/common';
import { ListBalances } from './list-balances.query.js';
import { ListStock } from './list-stock.query.js';
import { ReadBalance } from './read-balance.query.js';
import { ReadContainer } from './read-container.query.js';
import { ReadStoreOfLot } from './read-store-of-lot.query.js';

/** What can be asked of the store. */
@Injectable()
export class StoreReads {
  constructor(
    readonly container: ReadContainer,
    readonly ofLot: ReadStoreOfLot,
    readonly balance: ReadBalance,
    readonly balances: ListBalances,
    readonly stock: ListStock,
  ) {}
}
