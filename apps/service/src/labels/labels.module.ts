import { Module } from '@nestjs/common';
import { DrawLabels } from './draw-labels.query.js';
import { LabelsController } from './labels.controller.js';

/** Labels for what is in the shop, and what a scanned one is on. */
@Module({ controllers: [LabelsController], providers: [DrawLabels] })
export class LabelsModule {}
