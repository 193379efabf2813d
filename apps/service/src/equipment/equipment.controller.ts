import { Body, Controller, Param, Query } from '@nestjs/common';
import {
  routes,
  type CheckEquipment as CheckRequest,
  type PageQuery,
  type RegisterEquipment as Request,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { CheckEquipment } from './check-equipment.js';
import { ListChecks } from './list-checks.query.js';
import { ListSuspects } from './list-suspects.query.js';
import { ListEquipment } from './list-equipment.query.js';
import { RegisterEquipment } from './register-equipment.js';

@Controller()
export class EquipmentController {
  constructor(
    private readonly register: RegisterEquipment,
    private readonly list: ListEquipment,
    private readonly check: CheckEquipment,
    private readonly listChecks: ListChecks,
    private readonly listSuspects: ListSuspects,
  ) {}

  @Route(routes.registerEquipment)
  add(@Body({ schema: routes.registerEquipment.body }) request: Request) {
    return this.register.run(request);
  }

  @Route(routes.listEquipment)
  all() {
    return this.list.run();
  }

  @Route(routes.checkEquipment)
  checked(@Param('code') code: string, @Body({ schema: routes.checkEquipment.body }) request: CheckRequest) {
    return this.check.run(code, request);
  }

  @Route(routes.listChecks)
  checks(@Param('code') code: string) {
    return this.listChecks.run(code);
  }

  @Route(routes.listSuspects)
  suspects(@Param('code') code: string, @Query({ schema: routes.listSuspects.query }) query: PageQuery) {
    return this.listSuspects.run(code, query);
  }
}
