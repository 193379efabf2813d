import { Controller, Param, Query } from '@nestjs/common';
import { routes, type PageQuery } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { Recomputations } from './recomputations.query.js';

@Controller()
export class RecomputationsController {
  constructor(private readonly recomputations: Recomputations) {}

  @Route(routes.listRecomputations)
  list(@Query({ schema: routes.listRecomputations.query }) query: PageQuery) {
    return this.recomputations.list(query);
  }

  @Route(routes.readRecomputation)
  read(@Param('correction') correction: string) {
    return this.recomputations.read(correction);
  }
}
