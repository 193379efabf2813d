import { Module } from '@nestjs/common';
import { AmendContainer } from './amend-container.js';
import { BookLoss } from './book-loss.js';
import { CountLot } from './count-lot.js';
import { LabelContainers } from './label-containers.js';
import { ListBalances } from './list-balances.query.js';
import { ListStock } from './list-stock.query.js';
import { ReadBalance } from './read-balance.query.js';
import { ReadContainer } from './read-container.query.js';
import { ReadStoreOfLot } from './read-store-of-lot.query.js';
import { RetestLot } from './retest-lot.js';
import { StoreReads } from './store-reads.js';
import { StoreController } from './store.controller.js';
import { TellContainer } from './tell-container.js';

const READS = [StoreReads, ReadContainer, ReadStoreOfLot, ReadBalance, ListBalances, ListStock];

/** The store: containers, losses, counts, retests, and the balance of every lot. */
@Module({
  controllers: [StoreController],
  providers: [LabelContainers, TellContainer, BookLoss, CountLot, RetestLot, AmendContainer, ...READS],
})
export class StoreModule {}
