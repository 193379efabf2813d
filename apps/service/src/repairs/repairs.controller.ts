import { Body, Controller, Param } from '@nestjs/common';
import {
  routes,
  type InspectRepairAgain as InspectRequest,
  type JudgeRepair as JudgeRequest,
  type RecordRepair as RepairRequest,
  type RecordUse as UseRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { InspectRepairAgain } from './inspect-repair-again.js';
import { JudgeRepair } from './judge-repair.js';
import { RecordRepair } from './record-repair.js';
import { UseInRepair } from './use-in-repair.js';

@Controller()
export class RepairsController {
  constructor(
    private readonly recordRepair: RecordRepair,
    private readonly useInRepair: UseInRepair,
    private readonly judgeRepair: JudgeRepair,
    private readonly inspectRepairAgain: InspectRepairAgain,
  ) {}

  @Route(routes.recordRepair)
  done(@Param('part') part: string, @Body({ schema: routes.recordRepair.body }) request: RepairRequest) {
    return this.recordRepair.run(part, request);
  }

  @Route(routes.checkRepair)
  check(@Param('part') part: string, @Body({ schema: routes.checkRepair.body }) request: RepairRequest) {
    return this.recordRepair.check(part, request);
  }

  @Route(routes.useInRepair)
  used(@Param('repair') repair: string, @Body({ schema: routes.useInRepair.body }) request: UseRequest) {
    return this.useInRepair.run(repair, request);
  }

  @Route(routes.judgeRepair)
  judge(@Param('repair') repair: string, @Body({ schema: routes.judgeRepair.body }) request: JudgeRequest) {
    return this.judgeRepair.run(repair, request);
  }

  @Route(routes.inspectRepairAgain)
  inspect(@Param('repair') repair: string, @Body({ schema: routes.inspectRepairAgain.body }) request: InspectRequest) {
    return this.inspectRepairAgain.run(repair, request);
  }
}
