import { Module } from '@nestjs/common';
import { RecomputationsController } from './recomputations.controller.js';
import { Recomputations } from './recomputations.query.js';

/** How far the work is that corrections ask for. */
@Module({ controllers: [RecomputationsController], providers: [Recomputations] })
export class RecomputationsModule {}
