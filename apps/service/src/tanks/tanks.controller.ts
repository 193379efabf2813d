import { Body, Controller, Param } from '@nestjs/common';
import {
  routes,
  type EmptyTank as EmptyRequest,
  type FillTank as FillRequest,
  type RegisterTank as TankRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { EmptyTank } from './empty-tank.js';
import { FillTank } from './fill-tank.js';
import { ListTanks } from './list-tanks.query.js';
import { RegisterTank } from './register-tank.js';

@Controller()
export class TanksController {
  constructor(
    private readonly registerTank: RegisterTank,
    private readonly fillTank: FillTank,
    private readonly emptyTank: EmptyTank,
    private readonly list: ListTanks,
  ) {}

  @Route(routes.registerTank)
  add(@Body({ schema: routes.registerTank.body }) request: TankRequest) {
    return this.registerTank.run(request);
  }

  @Route(routes.listTanks)
  all() {
    return this.list.run();
  }

  @Route(routes.fillTank)
  fill(@Param('tank') tank: string, @Body({ schema: routes.fillTank.body }) request: FillRequest) {
    return this.fillTank.run(tank, request);
  }

  @Route(routes.emptyTank)
  empty(@Param('tank') tank: string, @Body({ schema: routes.emptyTank.body }) request: EmptyRequest) {
    return this.emptyTank.run(tank, request);
  }
}
