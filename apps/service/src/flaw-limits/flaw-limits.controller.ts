import { Body, Controller } from '@nestjs/common';
import { routes, type SetFlawLimits as Request } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ReadFlawLimits } from './read-flaw-limits.query.js';
import { SetFlawLimits } from './set-flaw-limits.js';

@Controller()
export class FlawLimitsController {
  constructor(
    private readonly setFlawLimits: SetFlawLimits,
    private readonly readFlawLimits: ReadFlawLimits,
  ) {}

  @Route(routes.setFlawLimits)
  set(@Body({ schema: routes.setFlawLimits.body }) request: Request) {
    return this.setFlawLimits.run(request);
  }

  @Route(routes.readFlawLimits)
  read() {
    return this.readFlawLimits.run();
  }
}
