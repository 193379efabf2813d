import { Module } from '@nestjs/common';
import { ListModels } from './list-models.query.js';
import { ModelsController } from './models.controller.js';
import { PublishSchedule } from './publish-schedule.js';
import { RegisterModel } from './register-model.js';
import { RegisterMold } from './register-mold.js';

/** Models, their laminate schedules, and molds. */
@Module({ controllers: [ModelsController], providers: [RegisterModel, PublishSchedule, RegisterMold, ListModels] })
export class ModelsModule {}
