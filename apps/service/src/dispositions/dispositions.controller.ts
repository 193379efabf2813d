import { Body, Controller, Param } from '@nestjs/common';
import { routes, type Dispose as Request, type RecordRework as ReworkRequest } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { RecordRework } from './record-rework.js';
import { Dispose } from './dispose.js';

@Controller()
export class DispositionsController {
  constructor(
    private readonly dispose: Dispose,
    private readonly recordRework: RecordRework,
  ) {}

  @Route(routes.dispose)
  decide(@Body({ schema: routes.dispose.body }) request: Request) {
    return this.dispose.run(request);
  }

  @Route(routes.recordRework)
  reworked(
    @Param('disposition') disposition: string,
    @Body({ schema: routes.recordRework.body }) request: ReworkRequest,
  ) {
    return this.recordRework.run(disposition, request);
  }
}
