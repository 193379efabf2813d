import { Body, Controller } from '@nestjs/common';
import { routes, type Dispose as Request } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { Dispose } from './dispose.js';

@Controller()
export class DispositionsController {
  constructor(private readonly dispose: Dispose) {}

  @Route(routes.dispose)
  decide(@Body({ schema: routes.dispose.body }) request: Request) {
    return this.dispose.run(request);
  }
}
