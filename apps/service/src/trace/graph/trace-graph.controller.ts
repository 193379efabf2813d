import { Controller, Param, Query } from '@nestjs/common';
import { routes, type HullTraceQuery, type TraceQuery } from '@hull-record/contracts';
import { Route } from '../../platform/http/route.js';
import { TraceHulls } from './trace-hulls.query.js';
import { TraceLot } from './trace-lot.query.js';

@Controller()
export class TraceGraphController {
  constructor(
    private readonly traceLot: TraceLot,
    private readonly traceHulls: TraceHulls,
  ) {}

  @Route(routes.traceLot)
  ofLot(@Param('lot') lot: string, @Query({ schema: routes.traceLot.query }) query: TraceQuery) {
    return this.traceLot.run(lot, query);
  }

  @Route(routes.traceHull)
  ofHull(@Param('number') number: string, @Query({ schema: routes.traceHull.query }) query: HullTraceQuery) {
    return this.traceHulls.run(number, query);
  }
}
