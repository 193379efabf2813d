import { Controller, Query } from '@nestjs/common';
import { routes, type DefectCountsQuery, type PageQuery, type WaitingQuery } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { CountDefects } from './count-defects.query.js';
import { CountHulls } from './count-hulls.query.js';
import { ListConcessions } from './list-concessions.query.js';
import { ListWaiting } from './list-waiting.query.js';

@Controller()
export class QualityController {
  constructor(
    private readonly listWaiting: ListWaiting,
    private readonly countDefects: CountDefects,
    private readonly countHulls: CountHulls,
    private readonly listConcessions: ListConcessions,
  ) {}

  @Route(routes.listWaiting)
  waiting(@Query({ schema: routes.listWaiting.query }) query: WaitingQuery) {
    return this.listWaiting.run(query);
  }

  @Route(routes.countDefects)
  defects(@Query({ schema: routes.countDefects.query }) query: DefectCountsQuery) {
    return this.countDefects.run(query);
  }

  @Route(routes.countHulls)
  hulls() {
    return this.countHulls.run();
  }

  @Route(routes.listConcessions)
  concessions(@Query({ schema: routes.listConcessions.query }) query: PageQuery) {
    return this.listConcessions.run(query);
  }
}
