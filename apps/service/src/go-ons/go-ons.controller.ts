import { Body, Controller } from '@nestjs/common';
import { routes, type GoOn as Request } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { RecordGoOn } from './record-go-on.js';

@Controller()
export class GoOnsController {
  constructor(private readonly recordGoOn: RecordGoOn) {}

  @Route(routes.goOn)
  goOn(@Body({ schema: routes.goOn.body }) request: Request) {
    return this.recordGoOn.run(request);
  }
}
