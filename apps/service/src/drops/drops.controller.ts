import { Body, Controller } from '@nestjs/common';
import { routes, type ApportionDrop as Request } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ApportionDrop } from './apportion-drop.js';

@Controller()
export class DropsController {
  constructor(private readonly apportionDrop: ApportionDrop) {}

  @Route(routes.apportionDrop)
  apportion(@Body({ schema: routes.apportionDrop.body }) request: Request) {
    return this.apportionDrop.run(request);
  }
}
