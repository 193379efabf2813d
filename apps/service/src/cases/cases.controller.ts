import { Body, Controller, Param, Query } from '@nestjs/common';
import {
  routes,
  type FreezeCase as FreezeRequest,
  type LookAtCase as LookRequest,
  type OpenCase as OpenRequest,
  type PageQuery,
  type ReadGroupsQuery,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { CompareGroups } from './compare-groups.query.js';
import { FreezeCase } from './freeze-case.js';
import { LookAtCase } from './look-at-case.js';
import { OpenCase } from './open-case.js';
import { ReadCases } from './read-cases.query.js';
import { ReadLook } from './read-look.query.js';

@Controller()
export class CasesController {
  constructor(
    private readonly openCase: OpenCase,
    private readonly freezeCase: FreezeCase,
    private readonly lookAtCase: LookAtCase,
    private readonly cases: ReadCases,
    private readonly looks: ReadLook,
    private readonly compareGroups: CompareGroups,
  ) {}

  @Route(routes.openCase)
  open(@Body({ schema: routes.openCase.body }) request: OpenRequest) {
    return this.openCase.run(request);
  }

  @Route(routes.listCases)
  list(@Query({ schema: routes.listCases.query }) query: PageQuery) {
    return this.cases.list(query);
  }

  @Route(routes.readCase)
  read(@Param('case') code: string) {
    return this.cases.one(code);
  }

  @Route(routes.readGroups)
  groups(@Param('case') code: string, @Query({ schema: routes.readGroups.query }) query: ReadGroupsQuery) {
    return this.compareGroups.run(code, query);
  }

  @Route(routes.freezeCase)
  freeze(@Param('case') code: string, @Body({ schema: routes.freezeCase.body }) request: FreezeRequest) {
    return this.freezeCase.run(code, request);
  }

  @Route(routes.lookAtCase)
  look(@Param('case') code: string, @Body({ schema: routes.lookAtCase.body }) request: LookRequest) {
    return this.lookAtCase.run(code, request);
  }

  @Route(routes.readLook)
  readLook(@Param('case') code: string, @Param('look') look: string) {
    return this.looks.run(code, look);
  }

  @Route(routes.computeLookAgain)
  again(@Param('case') code: string, @Param('look') look: string) {
    return this.looks.again(code, look);
  }
}
