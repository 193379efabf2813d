import { Module } from '@nestjs/common';
import { ChartsController } from './charts.controller.js';
import { FreezeChart } from './freeze-chart.js';
import { ListCharts } from './list-charts.query.js';
import { ReadChart } from './read-chart.query.js';

/** Charts of what is read, hull by hull; limits frozen from a chosen period. */
@Module({ controllers: [ChartsController], providers: [ListCharts, ReadChart, FreezeChart] })
export class ChartsModule {}
