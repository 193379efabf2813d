import { Body, Controller, Param, Query } from '@nestjs/common';
import {
  routes,
  type FitItem as FitRequest,
  type FittedItemsQuery,
  type RemoveItem as RemoveRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { FitItem } from './fit-item.js';
import { ListFittedItems } from './list-fitted-items.query.js';
import { RemoveItem } from './remove-item.js';

@Controller()
export class FittedItemsController {
  constructor(
    private readonly fitItem: FitItem,
    private readonly removeItem: RemoveItem,
    private readonly list: ListFittedItems,
  ) {}

  @Route(routes.fitItem)
  fit(@Param('number') number: string, @Body({ schema: routes.fitItem.body }) request: FitRequest) {
    return this.fitItem.run(number, request);
  }

  @Route(routes.removeItem)
  remove(@Param('item') item: string, @Body({ schema: routes.removeItem.body }) request: RemoveRequest) {
    return this.removeItem.run(item, request);
  }

  @Route(routes.listFittedItems)
  items(@Query({ schema: routes.listFittedItems.query }) query: FittedItemsQuery) {
    return this.list.run(query);
  }
}
