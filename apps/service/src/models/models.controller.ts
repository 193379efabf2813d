import { Body, Controller, Param } from '@nestjs/common';
import {
  routes,
  type PublishSchedule as ScheduleRequest,
  type RegisterModel as ModelRequest,
  type RegisterMold as MoldRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ListModels } from './list-models.query.js';
import { PublishSchedule } from './publish-schedule.js';
import { RegisterModel } from './register-model.js';
import { RegisterMold } from './register-mold.js';

@Controller()
export class ModelsController {
  constructor(
    private readonly registerModel: RegisterModel,
    private readonly publishSchedule: PublishSchedule,
    private readonly registerMold: RegisterMold,
    private readonly list: ListModels,
  ) {}

  @Route(routes.registerModel)
  addModel(@Body({ schema: routes.registerModel.body }) request: ModelRequest) {
    return this.registerModel.run(request);
  }

  @Route(routes.listModels)
  models() {
    return this.list.models();
  }

  @Route(routes.publishSchedule)
  publish(@Param('model') model: string, @Body({ schema: routes.publishSchedule.body }) request: ScheduleRequest) {
    return this.publishSchedule.run(model, request);
  }

  @Route(routes.registerMold)
  addMold(@Body({ schema: routes.registerMold.body }) request: MoldRequest) {
    return this.registerMold.run(request);
  }

  @Route(routes.listMolds)
  molds() {
    return this.list.molds();
  }
}
