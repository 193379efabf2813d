import { Controller, Param, Query } from '@nestjs/common';
import { type PageQuery, routes } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { OwnHulls } from './own-hulls.query.js';

@Controller()
export class OwnHullsController {
  constructor(private readonly hulls: OwnHulls) {}

  @Route(routes.listOwnHulls)
  list(@Query({ schema: routes.listOwnHulls.query }) query: PageQuery) {
    return this.hulls.list(query);
  }

  @Route(routes.readOwnHull)
  one(@Param('number') number: string) {
    return this.hulls.one(number);
  }
}
