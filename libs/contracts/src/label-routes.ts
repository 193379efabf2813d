import { z } from 'zod';
import * as labels from './labels.js';
import { get, post } from './route.js';

/** Labels, and what a scanned one is on. */
export const labelRoutes = {
  drawLabels: post({
    path: '/api/labels.pdf',
    tag: 'papers',
    summary: 'Labels for lots, containers, parts, hulls, equipment and badges as PDF; nothing is recorded.',
    body: labels.AskLabels,
    produces: 'application/pdf',
  }),
  listLabelStock: get({
    path: '/api/label-stock',
    tag: 'papers',
    summary: 'Sizes of label stock that labels are drawn for.',
    response: z.array(labels.LabelStockView),
  }),
  readLabelTarget: get({
    path: '/api/label-target',
    tag: 'papers',
    summary: 'What a scanned label is on, and where the web page shows it.',
    query: labels.LabelTargetQuery,
    response: labels.LabelTargetView,
  }),
} as const;
