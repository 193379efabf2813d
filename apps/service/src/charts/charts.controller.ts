import { Body, Controller, Param, Query } from '@nestjs/common';
import { routes, type FreezeChart as FreezeRequest, type ReadChartQuery } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { FreezeChart } from './freeze-chart.js';
import { ListCharts } from './list-charts.query.js';
import { ReadChart } from './read-chart.query.js';

@Controller()
export class ChartsController {
  constructor(
    private readonly listCharts: ListCharts,
    private readonly readChart: ReadChart,
    private readonly freezeChart: FreezeChart,
  ) {}

  @Route(routes.listCharts)
  list() {
    return this.listCharts.run();
  }

  @Route(routes.readChart)
  read(@Param('what') what: string, @Query({ schema: routes.readChart.query }) query: ReadChartQuery) {
    return this.readChart.run(what, query);
  }

  @Route(routes.freezeChart)
  freeze(@Param('what') what: string, @Body({ schema: routes.freezeChart.body }) request: FreezeRequest) {
    return this.freezeChart.run(what, request);
  }
}
