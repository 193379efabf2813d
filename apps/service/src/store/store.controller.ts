import { Body, Controller, Param, Query } from '@nestjs/common';
import {
  routes,
  type BalancesQuery,
  type BookLoss as LossRequest,
  type CountLot as CountRequest,
  type LabelContainers as LabelRequest,
  type RetestLot as RetestRequest,
  type TellContainer as TellRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { BookLoss } from './book-loss.js';
import { CountLot } from './count-lot.js';
import { LabelContainers } from './label-containers.js';
import { RetestLot } from './retest-lot.js';
import { StoreReads } from './store-reads.js';
import { TellContainer } from './tell-container.js';

@Controller()
export class StoreController {
  constructor(
    private readonly labelContainers: LabelContainers,
    private readonly tellContainer: TellContainer,
    private readonly bookLoss: BookLoss,
    private readonly countLot: CountLot,
    private readonly retestLot: RetestLot,
    private readonly reads: StoreReads,
  ) {}

  @Route(routes.labelContainers)
  label(@Param('lot') lot: string, @Body({ schema: routes.labelContainers.body }) request: LabelRequest) {
    return this.labelContainers.run(lot, request);
  }

  @Route(routes.tellContainer)
  tell(@Param('label') label: string, @Body({ schema: routes.tellContainer.body }) request: TellRequest) {
    return this.tellContainer.run(label, request);
  }

  @Route(routes.bookLoss)
  lose(@Param('lot') lot: string, @Body({ schema: routes.bookLoss.body }) request: LossRequest) {
    return this.bookLoss.run(lot, request);
  }

  @Route(routes.countLot)
  count(@Param('lot') lot: string, @Body({ schema: routes.countLot.body }) request: CountRequest) {
    return this.countLot.run(lot, request);
  }

  @Route(routes.retestLot)
  retest(@Param('lot') lot: string, @Body({ schema: routes.retestLot.body }) request: RetestRequest) {
    return this.retestLot.run(lot, request);
  }

  @Route(routes.readContainer)
  container(@Param('label') label: string) {
    return this.reads.container.run(label);
  }

  @Route(routes.readStoreOfLot)
  store(@Param('lot') lot: string) {
    return this.reads.ofLot.run(lot);
  }

  @Route(routes.readBalance)
  balance(@Param('lot') lot: string) {
    return this.reads.balance.run(lot);
  }

  @Route(routes.listBalances)
  balances(@Query({ schema: routes.listBalances.query }) query: BalancesQuery) {
    return this.reads.balances.run(query);
  }

  @Route(routes.listStock)
  stock(@Param('material') material: string) {
    return this.reads.stock.run(material);
  }
}
