import { Body, Controller, Param, Query } from '@nestjs/common';
import {
  routes,
  type AssignHin as HinRequest,
  type CorrectHin as CorrectRequest,
  type JoinPart as JoinRequest,
  type ListHullsQuery,
  type RecordUse as UseRequest,
  type ScrapPart as ScrapRequest,
  type StartHull as HullRequest,
  type StartPart as PartRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { AssignHin } from './assign-hin.js';
import { CorrectHin } from './correct-hin.js';
import { JoinPart } from './join-part.js';
import { ListHulls } from './list-hulls.query.js';
import { ReadHull } from './read-hull.query.js';
import { ScrapPart } from './scrap-part.js';
import { StartHull } from './start-hull.js';
import { StartPart } from './start-part.js';
import { UseInJoint } from './use-in-joint.js';

@Controller()
export class HullsController {
  constructor(
    private readonly startHull: StartHull,
    private readonly startPart: StartPart,
    private readonly scrapPart: ScrapPart,
    private readonly joinPart: JoinPart,
    private readonly useInJoint: UseInJoint,
    private readonly assignHin: AssignHin,
    private readonly correctHin: CorrectHin,
    private readonly listHulls: ListHulls,
    private readonly readHull: ReadHull,
  ) {}

  @Route(routes.startHull)
  start(@Body({ schema: routes.startHull.body }) request: HullRequest) {
    return this.startHull.run(request);
  }

  @Route(routes.listHulls)
  list(@Query({ schema: routes.listHulls.query }) query: ListHullsQuery) {
    return this.listHulls.run(query);
  }

  @Route(routes.readHull)
  read(@Param('number') number: string) {
    return this.readHull.run(number);
  }

  @Route(routes.assignHin)
  assign(@Param('number') number: string, @Body({ schema: routes.assignHin.body }) request: HinRequest) {
    return this.assignHin.run(number, request);
  }

  @Route(routes.correctHin)
  correct(@Param('number') number: string, @Body({ schema: routes.correctHin.body }) request: CorrectRequest) {
    return this.correctHin.run(number, request);
  }

  @Route(routes.startPart)
  startOther(@Body({ schema: routes.startPart.body }) request: PartRequest) {
    return this.startPart.run(request);
  }

  @Route(routes.scrapPart)
  scrap(@Param('part') part: string, @Body({ schema: routes.scrapPart.body }) request: ScrapRequest) {
    return this.scrapPart.run(part, request);
  }

  @Route(routes.joinPart)
  join(@Param('number') number: string, @Body({ schema: routes.joinPart.body }) request: JoinRequest) {
    return this.joinPart.run(number, request);
  }

  @Route(routes.useInJoint)
  used(@Param('joint') joint: string, @Body({ schema: routes.useInJoint.body }) request: UseRequest) {
    return this.useInJoint.run(joint, request);
  }
}
