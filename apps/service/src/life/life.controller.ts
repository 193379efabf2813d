import { Body, Controller, Param } from '@nestjs/common';
import { routes, type RecordLifeFact as LifeRequest, type ReleaseHull as ReleaseRequest } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { RecordLifeFact } from './record-life-fact.js';
import { ReleaseHull } from './release-hull.js';

@Controller()
export class LifeController {
  constructor(
    private readonly recordLifeFact: RecordLifeFact,
    private readonly releaseHull: ReleaseHull,
  ) {}

  @Route(routes.recordLifeFact)
  recordFact(@Param('number') number: string, @Body({ schema: routes.recordLifeFact.body }) request: LifeRequest) {
    return this.recordLifeFact.run(number, request);
  }

  @Route(routes.releaseHull)
  release(@Param('number') number: string, @Body({ schema: routes.releaseHull.body }) request: ReleaseRequest) {
    return this.releaseHull.run(number, request);
  }
}
