import { Controller, Param, Query, type StreamableFile } from '@nestjs/common';
import { routes, type HullTracePaperQuery } from '@hull-record/contracts';
import { Route } from '../../platform/http/route.js';
import { pdfAnswer } from '../../platform/papers/pdf-answer.js';
import { DrawHullTrace } from './hull-trace-paper.query.js';
import { DrawTrace } from './trace-paper.query.js';

@Controller()
export class TracePaperController {
  constructor(
    private readonly draw: DrawTrace,
    private readonly drawHulls: DrawHullTrace,
  ) {}

  @Route(routes.lotTracePaper)
  async ofLot(@Param('lot') lot: string): Promise<StreamableFile> {
    const { code, pdf } = await this.draw.run(lot);
    return pdfAnswer(pdf, 'trace', code);
  }

  @Route(routes.hullTracePaper)
  async ofHulls(
    @Param('number') number: string,
    @Query({ schema: routes.hullTracePaper.query }) { also }: HullTracePaperQuery,
  ): Promise<StreamableFile> {
    const { code, pdf } = await this.drawHulls.run(number, also);
    return pdfAnswer(pdf, 'trace', code);
  }
}
