import * as charts from './charts.js';
import { get, post } from './route.js';

/** Charts of what is read, hull by hull. */
export const chartRoutes = {
  listCharts: get({
    path: '/api/charts',
    tag: 'charts',
    summary: 'What can be charted: what the newest schedules ask to be read, and the climate of their parts.',
    response: charts.ChartList,
  }),
  readChart: get({
    path: '/api/charts/:what',
    tag: 'charts',
    summary: 'A process by its hulls: means, moving ranges, spread within, drift, capability. Never by person.',
    query: charts.ReadChartQuery,
    response: charts.ChartView,
  }),
  freezeChart: post({
    path: '/api/charts/:what/limits',
    tag: 'charts',
    summary: 'Freeze the limits of a chart from the hulls of a chosen period, with the reason.',
    body: charts.FreezeChart,
    response: charts.FrozenChart,
  }),
} as const;
