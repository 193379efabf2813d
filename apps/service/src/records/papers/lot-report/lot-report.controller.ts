import { Controller, Param, type StreamableFile } from '@nestjs/common';
import { routes } from '@hull-record/contracts';
import { Route } from '../../../platform/http/route.js';
import { pdfAnswer } from '../../../platform/papers/pdf-answer.js';
import { DrawLotReport } from './lot-report.query.js';

@Controller()
export class LotReportController {
  constructor(private readonly draw: DrawLotReport) {}

  @Route(routes.lotReport)
  async lotReport(@Param('lot') lot: string): Promise<StreamableFile> {
    const { code, pdf } = await this.draw.run(lot);
    return pdfAnswer(pdf, 'lot-report', code);
  }
}
