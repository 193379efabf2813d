import { Body, Controller, Query, StreamableFile } from '@nestjs/common';
import { routes, type AskLabels, type LabelStockView, type LabelTargetQuery } from '@hull-record/contracts';
import { LABEL_STOCK, LABEL_STOCK_NAMES } from '@hull-record/trade';
import { Route } from '../platform/http/route.js';
import { DrawLabels } from './draw-labels.query.js';
import { findLabelTarget } from './find-label-target.js';

@Controller()
export class LabelsController {
  constructor(private readonly drawLabels: DrawLabels) {}

  @Route(routes.drawLabels)
  async labels(@Body({ schema: routes.drawLabels.body }) request: AskLabels): Promise<StreamableFile> {
    const pdf = await this.drawLabels.run(request);
    return new StreamableFile(pdf, { type: 'application/pdf', disposition: 'inline; filename="labels.pdf"' });
  }

  @Route(routes.listLabelStock)
  stock(): readonly LabelStockView[] {
    return LABEL_STOCK_NAMES.map((name) => ({ name, ...LABEL_STOCK[name] }));
  }

  @Route(routes.readLabelTarget)
  target(@Query({ schema: routes.readLabelTarget.query }) query: LabelTargetQuery) {
    return findLabelTarget(query);
  }
}
