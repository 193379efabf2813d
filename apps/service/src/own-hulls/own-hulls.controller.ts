import { Body, Controller, Param, Query } from '@nestjs/common';
import { type Acknowledge as AcknowledgeRequest, type PageQuery, routes } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { Acknowledge } from './acknowledge.js';
import { ReadOwnNews } from './own-news.query.js';
import { OwnHulls } from './own-hulls.query.js';

@Controller()
export class OwnHullsController {
  constructor(
    private readonly hulls: OwnHulls,
    private readonly told: ReadOwnNews,
    private readonly acknowledging: Acknowledge,
  ) {}

  @Route(routes.listOwnNews)
  news() {
    return this.told.run();
  }

  @Route(routes.acknowledge)
  acknowledge(@Body({ schema: routes.acknowledge.body }) request: AcknowledgeRequest) {
    return this.acknowledging.run(request);
  }

  @Route(routes.listOwnHulls)
  list(@Query({ schema: routes.listOwnHulls.query }) query: PageQuery) {
    return this.hulls.list(query);
  }

  @Route(routes.readOwnHull)
  one(@Param('number') number: string) {
    return this.hulls.one(number);
  }
}
