import { Module } from '@nestjs/common';
import { ListNonconformities } from './list-nonconformities.query.js';
import { NonconformitiesController } from './nonconformities.controller.js';

/** What was done against a rule. */
@Module({ controllers: [NonconformitiesController], providers: [ListNonconformities] })
export class NonconformitiesModule {}
