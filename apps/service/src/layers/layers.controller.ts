import { Body, Controller, Param } from '@nestjs/common';
import {
  routes,
  type RecordLayer as LayerRequest,
  type MoveToSchedule as MoveRequest,
  type RecordLayers as LayersRequest,
  type RecordUse as UseRequest,
  type SignHoldPoint as SignRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { RecordLayer } from './record-layer.js';
import { MoveToSchedule } from './move-to-schedule.js';
import { RecordLayers } from './record-layers.js';
import { SignHoldPoint } from './sign-hold-point.js';
import { UseInLayer } from './use-in-layer.js';

@Controller()
export class LayersController {
  constructor(
    private readonly recordLayer: RecordLayer,
    private readonly recordLayers: RecordLayers,
    private readonly moveToSchedule: MoveToSchedule,
    private readonly useInLayer: UseInLayer,
    private readonly signHoldPoint: SignHoldPoint,
  ) {}

  @Route(routes.moveToSchedule)
  move(@Param('part') part: string, @Body({ schema: routes.moveToSchedule.body }) request: MoveRequest) {
    return this.moveToSchedule.run(part, request);
  }

  @Route(routes.recordLayers)
  several(@Body({ schema: routes.recordLayers.body }) request: LayersRequest) {
    return this.recordLayers.run(request);
  }

  @Route(routes.checkLayer)
  check(@Param('part') part: string, @Body({ schema: routes.checkLayer.body }) request: LayerRequest) {
    return this.recordLayer.check(part, request);
  }

  @Route(routes.recordLayer)
  made(@Param('part') part: string, @Body({ schema: routes.recordLayer.body }) request: LayerRequest) {
    return this.recordLayer.run(part, request);
  }

  @Route(routes.useInLayer)
  used(@Param('layer') layer: string, @Body({ schema: routes.useInLayer.body }) request: UseRequest) {
    return this.useInLayer.run(layer, request);
  }

  @Route(routes.signHoldPoint)
  sign(@Param('layer') layer: string, @Body({ schema: routes.signHoldPoint.body }) request: SignRequest) {
    return this.signHoldPoint.run(layer, request);
  }
}
