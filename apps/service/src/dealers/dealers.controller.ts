import { Body, Controller } from '@nestjs/common';
import { routes, type RegisterDealer as Request } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ListDealers } from './list-dealers.query.js';
import { RegisterDealer } from './register-dealer.js';

@Controller()
export class DealersController {
  constructor(
    private readonly register: RegisterDealer,
    private readonly list: ListDealers,
  ) {}

  @Route(routes.registerDealer)
  add(@Body({ schema: routes.registerDealer.body }) request: Request) {
    return this.register.run(request);
  }

  @Route(routes.listDealers)
  all() {
    return this.list.run();
  }
}
