import { Body, Controller, Param } from '@nestjs/common';
import {
  routes,
  type ReadJoint as JointRequest,
  type ReadWhole as WholeRequest,
  type TakeReadings as Request,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { TakeReadings } from './take-readings.js';

@Controller()
export class ReadingsController {
  constructor(private readonly takeReadings: TakeReadings) {}

  @Route(routes.readLayer)
  ofLayer(@Param('layer') layer: string, @Body({ schema: routes.readLayer.body }) request: Request) {
    return this.takeReadings.run('layer', layer, request);
  }

  @Route(routes.readRepair)
  ofRepair(@Param('repair') repair: string, @Body({ schema: routes.readRepair.body }) request: Request) {
    return this.takeReadings.run('repair', repair, request);
  }

  @Route(routes.readJoint)
  ofJoint(@Param('joint') joint: string, @Body({ schema: routes.readJoint.body }) request: JointRequest) {
    return this.takeReadings.run('joint', joint, request);
  }

  @Route(routes.takePartReadings)
  ofPart(@Param('part') part: string, @Body({ schema: routes.takePartReadings.body }) request: WholeRequest) {
    return this.takeReadings.run('part', part, request);
  }

  @Route(routes.takeLotReadings)
  ofLot(@Param('lot') lot: string, @Body({ schema: routes.takeLotReadings.body }) request: WholeRequest) {
    return this.takeReadings.run('lot', lot, request);
  }
}
