import { Controller, Query } from '@nestjs/common';
import { routes, type NonconformitiesQuery } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ListNonconformities } from './list-nonconformities.query.js';

@Controller()
export class NonconformitiesController {
  constructor(private readonly list: ListNonconformities) {}

  @Route(routes.listNonconformities)
  all(@Query({ schema: routes.listNonconformities.query }) query: NonconformitiesQuery) {
    return this.list.run(query);
  }
}
