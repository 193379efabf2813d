import { Body, Controller, Param } from '@nestjs/common';
import {
  routes,
  type JudgeRepair as JudgeRequest,
  type RecordTouchUp as Request,
  type SetTouchUpLimit as LimitRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { JudgeTouchUp } from './judge-touch-up.js';
import { RecordTouchUp } from './record-touch-up.js';
import { SetTouchUpLimit } from './set-touch-up-limit.js';

@Controller()
export class TouchUpsController {
  constructor(
    private readonly recordTouchUp: RecordTouchUp,
    private readonly judgeTouchUp: JudgeTouchUp,
    private readonly setTouchUpLimit: SetTouchUpLimit,
  ) {}

  @Route(routes.recordTouchUp)
  done(@Param('part') part: string, @Body({ schema: routes.recordTouchUp.body }) request: Request) {
    return this.recordTouchUp.run(part, request);
  }

  @Route(routes.judgeTouchUp)
  judge(@Param('touchUp') touchUp: string, @Body({ schema: routes.judgeTouchUp.body }) request: JudgeRequest) {
    return this.judgeTouchUp.run(touchUp, request);
  }

  @Route(routes.setTouchUpLimit)
  limit(@Body({ schema: routes.setTouchUpLimit.body }) request: LimitRequest) {
    return this.setTouchUpLimit.run(request);
  }
}
